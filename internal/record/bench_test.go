package record

import (
	"bytes"
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"go.yaml.in/yaml/v4"

	"github.com/slablint/slablint/internal/place"
)

// benchRecord is a record of ordinary size, about 8.6 kB and 440 values, in
// both formats.
func benchRecord(b *testing.B) (inYAML, inJSON []byte) {
	var text strings.Builder
	text.WriteString("job:\n  id: J-2026-031\n  stage: closeout\nsystems:\n")
	for i := range 29 {
		fmt.Fprintf(&text, "  - id: S%d\n    kind: sub-slab\n    fan: {class: \"RP-%d\", running: true}\n", i, i)
		fmt.Fprintf(&text, "    discharge:\n      height: 12 ft %d in\n      direction: up\n      # seen from the drive\n", i%12)
		fmt.Fprintf(&text, "    readings: [%d.5, -0.%d, 1.2e-1]\n    notes: >-\n      The pit was dug out\n      by hand, %d litres.\n", i, i+1, i)
		fmt.Fprintf(&text, "    photo:\n    tested: 2026-03-%02d\n", i%28+1)
	}
	doc, err := ReadYAML("job", []byte(text.String()), Limits{})
	if err != nil {
		b.Fatal(err)
	}
	twin, err := json.MarshalIndent(doc.Root.Value(), "", " ")
	if err != nil {
		b.Fatal(err)
	}
	nodes := 0
	walk(doc.Root, place.Root, func(place.Pointer, *Node) { nodes++ })
	b.Logf("%d values, %d bytes in YAML, %d in JSON", nodes, text.Len(), len(twin))
	return []byte(text.String()), twin
}

func BenchmarkReadYAML(b *testing.B) {
	data, _ := benchRecord(b)
	b.Run("record", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			if _, err := ReadYAML("job", data, Limits{}); err != nil {
				b.Fatal(err)
			}
		}
	})
	b.Run("parser alone", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			var n yaml.Node
			if err := yaml.Load(data, &n); err != nil {
				b.Fatal(err)
			}
		}
	})
}

func BenchmarkReadJSON(b *testing.B) {
	_, data := benchRecord(b)
	b.Run("record", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			if _, err := ReadJSON("job", data, Limits{}); err != nil {
				b.Fatal(err)
			}
		}
	})
	b.Run("encoding/json", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			if _, err := decodeJSON(data); err != nil {
				b.Fatal(err)
			}
		}
	})
}

func BenchmarkStream(b *testing.B) {
	_, data := benchRecord(b)
	var line bytes.Buffer
	if err := json.Compact(&line, data); err != nil {
		b.Fatal(err)
	}
	line.WriteByte('\n')
	in := bytes.Repeat(line.Bytes(), 100)
	b.SetBytes(int64(len(in)))
	b.ReportAllocs()
	for b.Loop() {
		n := 0
		for _, err := range Stream("job", bytes.NewReader(in), Limits{}) {
			if err != nil {
				b.Fatal(err)
			}
			n++
		}
		if n != 100 {
			b.Fatal(n)
		}
	}
}

func BenchmarkLocate(b *testing.B) {
	data, _ := benchRecord(b)
	doc, err := ReadYAML("job", data, Limits{})
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		doc.Locate("/systems/28/discharge/height")
	}
}
