package record

import (
	"errors"
	"strings"
	"testing"
)

// The core schema of YAML 1.2.2 section 10.3.2 says what an unquoted scalar is;
// the rows marked "decided" are stricter.
func TestYAMLPlainScalars(t *testing.T) {
	for _, c := range []struct {
		in   string
		kind Kind
		text string
	}{
		{"null", Null, ""}, {"Null", Null, ""}, {"NULL", Null, ""}, {"~", Null, ""}, {"", Null, ""},
		{"nUll", String, "nUll"}, {"none", String, "none"},
		{"true", Bool, "true"}, {"True", Bool, "true"}, {"TRUE", Bool, "true"},
		{"false", Bool, "false"}, {"False", Bool, "false"}, {"FALSE", Bool, "false"},
		{"yes", String, "yes"}, {"no", String, "no"}, {"on", String, "on"}, {"off", String, "off"},
		{"Yes", String, "Yes"}, {"NO", String, "NO"}, {"y", String, "y"}, {"n", String, "n"},
		{"0", Number, "0"}, {"-0", Number, "-0"}, {"19", Number, "19"}, {"-19", Number, "-19"},
		{"3.10", Number, "3.10"}, {"-2E+05", Number, "-2E+05"}, {"1e3", Number, "1e3"}, {"12e-1", Number, "12e-1"},
		{"+5", Number, "5"}, {".5", Number, "0.5"}, {"-.5", Number, "-0.5"}, {"5.", Number, "5"}, // decided: as JSON writes them
		{"+12.50e3", Number, "12.50e3"}, {"5.e3", Number, "5e3"},
		{"12345678901234567890", Number, "12345678901234567890"},
		{"0.1000000000000000055511151231257827", Number, "0.1000000000000000055511151231257827"},
		{"1.7976931348623157e308", Number, "1.7976931348623157e308"}, {"5e-324", Number, "5e-324"}, {"0e999", Number, "0e999"},
		{"1_000", String, "1_000"}, {"1,000", String, "1,000"}, {"190:20:30", String, "190:20:30"}, {"08:30", String, "08:30"},
		{"0x", String, "0x"}, {"0xyz", String, "0xyz"}, {"-0x1F", String, "-0x1F"}, {"0b11", String, "0b11"}, {"0o8", String, "0o8"},
		{"1e", String, "1e"}, {"e3", String, "e3"}, {"1e+", String, "1e+"}, {"1.2.3", String, "1.2.3"}, {".", String, "."},
		{"+", String, "+"}, {"--1", String, "--1"}, {"+-.inf", String, "+-.inf"}, {"-.nan", String, "-.nan"}, {".iNf", String, ".iNf"},
		{"NaN", String, "NaN"}, {"Infinity", String, "Infinity"}, {"inf", String, "inf"},
		{"2026-03-01", String, "2026-03-01"}, {"2026-3-1", String, "2026-3-1"}, {"2026-03-01T10:00:00Z", String, "2026-03-01T10:00:00Z"},
		{"2026-03-01 10:00:00", String, "2026-03-01 10:00:00"}, {"20260301", Number, "20260301"},
		{"11 ft 6 in", String, "11 ft 6 in"}, {"4.0 pCi/L", String, "4.0 pCi/L"}, {`4" pipe`, String, `4" pipe`}, {"-1.2 inH2O", String, "-1.2 inH2O"},
		{"'012'", String, "012"}, {`"true"`, String, "true"}, {"''", String, ""}, {`"\u00b2\x41\t\\\/\0"`, String, "²A\t\\/\x00"},
		{"x # y", String, "x"}, {"x#y", String, "x#y"}, {"http://a/b?c", String, "http://a/b?c"}, {"<<", String, "<<"},
	} {
		n := mustRead(t, ReadYAML, "v: "+c.in+"\n").Root.Get("v")
		if n.Kind() != c.kind || n.Text() != c.text {
			t.Errorf("%s: got %v %q, want %v %q", c.in, n.Kind(), n.Text(), c.kind, c.text)
		}
	}
}

func TestYAMLRefusesAmbiguousScalars(t *testing.T) {
	const (
		zero  = "found %s, which starts with a zero and may be read as an octal number; write %s, or put it in quotes if it is a code"
		based = "found %s, which YAML reads as %s; write that, or put it in quotes if it is a code"
	)
	long := strings.Repeat("9", 65)
	for in, want := range map[string]string{
		"012":                 fill(zero, "012", "12"),
		"00":                  fill(zero, "00", "0"),
		"-01.50":              fill(zero, "-01.50", "-1.50"),
		"+007e1":              fill(zero, "+007e1", "7e1"),
		"00.":                 fill(zero, "00.", "0"),
		"02134":               fill(zero, "02134", "2134"),
		"0x1F":                fill(based, "0x1F", "31"),
		"0o17":                fill(based, "0o17", "15"),
		"0xFFFFFFFFFFFFFFFFF": fill(based, "0xFFFFFFFFFFFFFFFFF", "a number of another base"),
		".inf":                "found .inf (infinity); expected a finite number, or quotes around text",
		"+.Inf":               "found +.Inf (infinity); expected a finite number, or quotes around text",
		"-.INF":               "found -.INF (infinity); expected a finite number, or quotes around text",
		".nan":                "found .nan (not a number); leave out what is not known, or put text in quotes",
		".NaN":                "found .NaN (not a number); leave out what is not known, or put text in quotes",
		"1e400":               "found 1e400, which is beyond the largest number that is read, about 1.8e308",
		"-1e400":              "found -1e400, which is beyond the largest number that is read, about 1.8e308",
		"1e-400":              "found 1e-400, which is nearer to zero than the smallest number that is read, about 4.9e-324",
		long:                  "found a number of 65 characters; at most 64 are read",
	} {
		_, err := ReadYAML("job", []byte("v: "+in+"\n"), Limits{})
		if err == nil || err.Error() != "job:1:4: "+want {
			t.Errorf("%s: got %v", in, err)
		}
		var e *Error
		if errors.As(err, &e) && e.Spot.EndColumn != 4+len(in) {
			t.Errorf("%s: ends at column %d", in, e.Spot.EndColumn)
		}
	}
}

func fill(format string, args ...string) string {
	for _, a := range args {
		format = strings.Replace(format, "%s", a, 1)
	}
	return format
}

func TestYAMLKeepsOrderAndText(t *testing.T) {
	doc := mustRead(t, ReadYAML, "z: 1\na: {y: x, b: }\n\"1\": [~, 'no']\n? long\n: key\nyes: on\n\"<<\": c\n")
	want := `"" object ""
"/z" number "1"
"/a" object ""
"/a/y" string "x"
"/a/b" null ""
"/1" array ""
"/1/0" null ""
"/1/1" string "no"
"/long" string "key"
"/yes" string "on"
"/<<" string "c"
`
	if got := contents(doc.Root); got != want {
		t.Errorf("got\n%s", got)
	}
}

func TestYAMLManyKeys(t *testing.T) {
	var b strings.Builder
	for i := range 20_000 {
		b.WriteString("k" + grouped(i) + ": 1\n")
	}
	text := b.String()
	if n := mustRead(t, ReadYAML, text).Root.Len(); n != 20_000 {
		t.Errorf("%d keys", n)
	}
	for _, c := range []struct{ key, want string }{
		{"k5", `job:20001:1: found the key "k5" a second time; the first is at line 6, column 1: keep one of them`},
		{"k12,345", `job:20001:1: found the key "k12,345" a second time; the first is at line 12346, column 1: keep one of them`},
	} {
		if _, err := ReadYAML("job", []byte(text+c.key+": 1\n"), Limits{}); err == nil || err.Error() != c.want {
			t.Errorf("got %v", err)
		}
	}
}

func TestYAMLLongScalar(t *testing.T) {
	long := strings.Repeat("0123456789 ", 300_000)
	for _, in := range []string{"v: " + long + "x\n", "v: '" + long + "x'\n", "v: \"" + long + "x\"\n", "v: |\n  " + long + "x\n"} {
		n := mustRead(t, ReadYAML, in).Root.Get("v")
		if got := strings.TrimSuffix(n.Text(), "\n"); got != long+"x" {
			t.Errorf("%.10s: %d bytes", in, len(got))
		}
	}
}
