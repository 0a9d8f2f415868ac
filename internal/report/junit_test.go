package report

import (
	"bytes"
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/slablint/slablint/internal/finding"
)

// node is an XML element with what the check of the schema needs.
type node struct {
	XMLName  xml.Name
	Attrs    []xml.Attr `xml:",any,attr"`
	Children []node     `xml:",any"`
	Text     string     `xml:",chardata"`
}

func (n node) attr(name string) string {
	for _, a := range n.Attrs {
		if a.Name.Local == name {
			return a.Value
		}
	}
	return ""
}

func (n node) has(name string) bool {
	for _, a := range n.Attrs {
		if a.Name.Local == name {
			return true
		}
	}
	return false
}

func (n node) child(name string) *node {
	for i := range n.Children {
		if n.Children[i].XMLName.Local == name {
			return &n.Children[i]
		}
	}
	return nil
}

// xsd checks documents against what a schema uses of XML Schema: global
// elements, sequences, choices, references, occurrence, attributes and mixed
// text. It stops the test at anything else.
type xsd struct{ elements, types map[string]node }

func readXSD(t *testing.T, file string) xsd {
	t.Helper()
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	var root node
	if err := xml.Unmarshal(data, &root); err != nil {
		t.Fatal(err)
	}
	s := xsd{map[string]node{}, map[string]node{}}
	for _, n := range root.Children {
		switch n.XMLName.Local {
		case "element":
			s.elements[n.attr("name")] = n
		case "complexType":
			s.types[n.attr("name")] = n
		case "simpleType":
		default:
			t.Fatalf("the schema has a %s, which this check does not know", n.XMLName.Local)
		}
	}
	return s
}

// particle writes a content model as a regular expression over names.
func (s xsd) particle(n node) (string, error) {
	var inner string
	switch n.XMLName.Local {
	case "element":
		inner = n.attr("ref") + n.attr("name") + " "
	case "sequence", "choice":
		var parts []string
		for _, c := range n.Children {
			part, err := s.particle(c)
			if err != nil {
				return "", err
			}
			parts = append(parts, part)
		}
		inner = strings.Join(parts, map[string]string{"sequence": "", "choice": "|"}[n.XMLName.Local])
	default:
		return "", fmt.Errorf("content model with %s", n.XMLName.Local)
	}
	low, high := "1", "1"
	if v := n.attr("minOccurs"); v != "" {
		low = v
	}
	if v := n.attr("maxOccurs"); v != "" {
		high = strings.Replace(v, "unbounded", "", 1)
	}
	return "(?:" + inner + "){" + low + "," + high + "}", nil
}

func (s xsd) check(doc node) error {
	declared, ok := s.elements[doc.XMLName.Local]
	if !ok {
		return fmt.Errorf("no element %s", doc.XMLName.Local)
	}
	content := declared.child("complexType")
	if content == nil {
		if named, ok := s.types[declared.attr("type")]; ok {
			content = &named
		} else if len(doc.Children) > 0 || len(doc.Attrs) > 0 {
			return fmt.Errorf("%s holds more than text", doc.XMLName.Local)
		} else {
			return nil
		}
	}
	allowed := map[string]bool{}
	model := "^"
	for _, c := range content.Children {
		if c.XMLName.Local == "attribute" {
			allowed[c.attr("name")] = true
			if c.attr("use") == "required" && !doc.has(c.attr("name")) {
				return fmt.Errorf("%s has no %s", doc.XMLName.Local, c.attr("name"))
			}
			continue
		}
		part, err := s.particle(c)
		if err != nil {
			return err
		}
		model += part
	}
	for _, a := range doc.Attrs {
		if !allowed[a.Name.Local] {
			return fmt.Errorf("%s has an attribute %s", doc.XMLName.Local, a.Name.Local)
		}
	}
	names := ""
	for _, c := range doc.Children {
		names += c.XMLName.Local + " "
	}
	if !regexp.MustCompile(model + "$").MatchString(names) {
		return fmt.Errorf("%s holds %q, want %s", doc.XMLName.Local, names, model)
	}
	if content.attr("mixed") != "true" && strings.TrimSpace(doc.Text) != "" {
		return fmt.Errorf("%s holds the text %q", doc.XMLName.Local, doc.Text)
	}
	for _, c := range doc.Children {
		if err := s.check(c); err != nil {
			return err
		}
	}
	return nil
}

func parseXML(t *testing.T, text string) node {
	t.Helper()
	var doc node
	if err := xml.Unmarshal([]byte(text), &doc); err != nil {
		t.Fatalf("%v in:\n%s", err, text)
	}
	return doc
}

func TestJUnitFollowsItsSchema(t *testing.T) {
	schema := readXSD(t, filepath.Join("testdata", "schema", "junit-10.xsd"))
	for _, s := range samples() {
		if err := schema.check(parseXML(t, render(t, JUnit, s.report, Options{}))); err != nil {
			t.Errorf("%s: %v", s.name, err)
		}
	}
	good := render(t, JUnit, several(), Options{})
	for name, change := range map[string][2]string{
		"an attribute of another place": {`<testcase classname=`, `<testcase hostname="h" classname=`},
		"an element of no place":        {`<properties>`, `<verdict></verdict><properties>`},
		"a suite without its count":     {`<testsuite name="inputs" tests="2" `, `<testsuite name="inputs" `},
		"a failure outside a case":      {`<testcase `, `<failure type="x"></failure><testcase `},
		"text outside a failure":        {`<properties>`, `all is well<properties>`},
	} {
		bad := strings.Replace(good, change[0], change[1], 1)
		if bad == good {
			t.Fatalf("%s: the sample has no %s", name, change[0])
		}
		if schema.check(parseXML(t, bad)) == nil {
			t.Errorf("%s: the check takes it", name)
		}
	}
}

// One case for each requirement and subject judged, met included; counts are
// those of the cases.
func TestJUnitCases(t *testing.T) {
	for _, s := range samples() {
		doc := parseXML(t, render(t, JUnit, s.report, Options{}))
		total := 0
		for i, suite := range doc.Children {
			counted := map[string]int{}
			names := map[string]bool{}
			for _, c := range suite.Children {
				if c.XMLName.Local != "testcase" {
					continue
				}
				counted["tests"]++
				names[c.attr("classname")+"\x00"+c.attr("name")] = true
				for attr, kind := range map[string]string{"failures": "failure", "errors": "error", "skipped": "skipped"} {
					if c.child(kind) != nil {
						counted[attr]++
					}
				}
			}
			for _, attr := range []string{"tests", "failures", "errors", "skipped"} {
				if got, want := suite.attr(attr), fmt.Sprint(counted[attr]); got != want {
					t.Errorf("%s: suite %s says %s=%s and has %s", s.name, suite.attr("name"), attr, got, want)
				}
			}
			if len(names) != counted["tests"] {
				t.Errorf("%s: cases of suite %s share names", s.name, suite.attr("name"))
			}
			if i > 0 && counted["tests"] < len(s.report.Jobs[i-1].Findings) {
				t.Errorf("%s: %d cases for %d findings", s.name, counted["tests"], len(s.report.Jobs[i-1].Findings))
			}
			total += counted["tests"]
		}
		if got := doc.attr("tests"); got != fmt.Sprint(total) {
			t.Errorf("%s: says %s tests and has %d", s.name, got, total)
		}
	}
}

// A build fails on what holds the job and on what could not be judged, and on
// nothing else.
func TestJUnitFailsOnWhatHolds(t *testing.T) {
	for _, s := range samples() {
		holding := 0
		for _, job := range s.report.Jobs {
			for _, f := range job.Findings {
				if f.Holds {
					holding++
				}
			}
		}
		doc := parseXML(t, render(t, JUnit, s.report, Options{}))
		if got := doc.attr("failures"); got != fmt.Sprint(holding) {
			t.Errorf("%s: %s failures, want %d", s.name, got, holding)
		}
		if got := doc.attr("errors"); got != fmt.Sprint(len(s.report.Errors)) {
			t.Errorf("%s: %s errors, want %d", s.name, got, len(s.report.Errors))
		}
	}
}

// A report saved without what is met still gives a passing run with a case, and
// says what it leaves out.
func TestJUnitOfAShortReport(t *testing.T) {
	saved, err := Read(strings.NewReader(render(t, JSON, reportOf(readyJob()), Options{})))
	if err != nil {
		t.Fatal(err)
	}
	got := render(t, JUnit, saved, Options{})
	if !strings.Contains(got, "2 more met") || strings.Contains(got, "<failure") {
		t.Errorf("no case for the two that are met in:\n%s", got)
	}
}

// XML 1.0, 2.2: no control characters, whatever a record holds.
func TestJUnitIsXMLWhateverTheText(t *testing.T) {
	text := render(t, JUnit, reportOf(hostileJob()), Options{})
	dec := xml.NewDecoder(bytes.NewReader([]byte(text)))
	for {
		token, err := dec.Token()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			t.Fatal(err)
		}
		if data, ok := token.(xml.CharData); ok && strings.ContainsRune(string(data), '\x1b') {
			t.Errorf("escape character in %q", data)
		}
	}
	var r finding.Report
	if got := parseXML(t, render(t, JUnit, r, Options{})); got.attr("tests") != "0" {
		t.Errorf("an empty report has %s tests", got.attr("tests"))
	}
}
