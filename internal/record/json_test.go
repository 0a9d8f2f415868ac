package record

import (
	"bytes"
	"encoding/json"
	"io"
	"reflect"
	"strings"
	"testing"
)

func TestJSONErrors(t *testing.T) {
	const pair = "which is half of a surrogate pair; expected both halves, or the character itself"
	for _, c := range []struct{ name, in, want string }{
		{"empty", "", "job:1:1: found an empty file; expected keys and values"},
		{"blank", " \r\n\t", "job:1:1: found an empty file; expected keys and values"},
		{"only a byte order mark", "\ufeff", "job:1:1: found an empty file; expected keys and values"},
		{"array", "\n [1]", "job:2:2: found an array at the top level; expected an object, which begins with {"},
		{"string", `"a"`, `job:1:1: found '"'; expected {`},
		{"YAML", "job: J-1", "job:1:1: found 'j'; expected {"},
		{"zero byte first", "\x00", "job:1:1: found the invisible character U+0000; expected {"},
		{"second value", "{}\n{}", "job:2:1: found '{' after the object; expected nothing more"},
		{"closed twice", "{}}", "job:1:3: found '}' after the object; expected nothing more"},
		{"open object", "{\"a\":1\n", "job:2:1: found the end of the file; expected ',' or '}' of the object that begins at line 1, column 1"},
		{"open array", `{"a":[1`, "job:1:8: found the end of the file; expected ',' or ']' of the array that begins at line 1, column 6"},
		{"wrong bracket", `{"a":[1}`, "job:1:8: found '}'; expected ',' or ']' of the array that begins at line 1, column 6"},
		{"nothing after the brace", `{`, "job:1:2: found the end of the file; expected a key in double quotes"},
		{"nothing after the bracket", `{"a":[`, "job:1:7: found the end of the file; expected a value"},
		{"no comma", `{"a":1 "b":2}`, `job:1:8: found '"'; expected ',' or '}' of the object that begins at line 1, column 1`},
		{"comma first", `{,}`, "job:1:2: found ','; expected a key in double quotes"},
		{"comma last in an object", "{\"a\":1,\n}", "job:2:1: found '}' after a comma; expected a key in double quotes"},
		{"comma last in an array", `{"a":[1, ]}`, "job:1:10: found ']' after a comma; expected a value"},
		{"two commas", `{"a":[1,,2]}`, "job:1:9: found ','; expected a value"},
		{"no colon", `{"é" 1}`, `job:1:6: found '1'; expected ':' after the key "é"`},
		{"no value", `{"a":}`, "job:1:6: found '}'; expected a value"},
		{"bare key", `{a:1}`, "job:1:2: found 'a'; expected a key in double quotes"},
		{"key is a number", `{1:1}`, "job:1:2: found '1'; expected a key in double quotes"},
		{"single quotes", `{"a":'b'}`, "job:1:6: found '''; expected a value (text stands in double quotes)"},
		{"comment", `{"a":1 // b`, "job:1:8: found '/'; expected ',' or '}' of the object that begins at line 1, column 1"},
		{"comment for a value", `{"a":# b`, "job:1:6: found '#'; expected a value (JSON has no comments)"},
		{"same key twice", "{\"a\":1,\n\"\\u0061\":2}", `job:2:1: found the key "a" a second time; the first is at line 1, column 2: keep one of them`},

		{"True", `{"a":True}`, "job:1:6: found True; expected a value (text stands in double quotes)"},
		{"nul", `{"a":nul}`, "job:1:6: found nul; expected a value (text stands in double quotes)"},
		{"nullx", `{"a":nullx}`, "job:1:6: found nullx; expected a value (text stands in double quotes)"},
		{"NaN", `{"a":NaN}`, "job:1:6: found NaN; expected a value (text stands in double quotes)"},
		{"minus infinity", `{"a":-Infinity}`, "job:1:7: found 'I'; expected a digit after -"},
		{"plus", `{"a":+1}`, "job:1:6: found '+'; expected a value (a number begins with a digit or -)"},
		{"point first", `{"a":.5}`, "job:1:6: found '.'; expected a value (a number begins with a digit or -)"},
		{"point last", `{"a":5.}`, "job:1:8: found '}'; expected a digit after the decimal point"},
		{"exponent without digits", `{"a":5e+}`, "job:1:9: found '}'; expected a digit of the exponent"},
		{"leading zero", `{"a":-012}`, "job:1:6: found -012; expected a number without leading zeros, or text in double quotes"},
		{"hexadecimal", `{"a":0x1F}`, "job:1:7: found 'x'; expected ',' or '}' of the object that begins at line 1, column 1"},
		{"too large", `{"a":1e400}`, "job:1:6: found 1e400, which is beyond the largest number that is read, about 1.8e308"},
		{"too small", `{"a":-1E-400}`, "job:1:6: found -1E-400, which is nearer to zero than the smallest number that is read, about 4.9e-324"},
		{"too long", `{"a":` + strings.Repeat("1", 65) + "}", "job:1:6: found a number of 65 characters; at most 64 are read"},

		{"open key", `{"a`, "job:1:4: found the end of the file inside a string; expected the closing double quote"},
		{"open string", `{"a":"b`, "job:1:8: found the end of the file inside a string; expected the closing double quote"},
		{"line break in a string", "{\"a\":\"b\n\"}", "job:1:8: found the end of the line inside a string; expected the closing double quote"},
		{"tab in a string", "{\"a\":\"é\t\"}", `job:1:8: found a tab inside a string; write \t`},
		{"control character after an escape", "{\"a\":\"\\n\x1b\"}", `job:1:9: found the control character U+001B inside a string; write \u001b`},
		{"unknown escape", `{"a":"\é"}`, `job:1:7: found a backslash that begins no escape; write \\ for a backslash`},
		{"escape at the end", `{"a":"\`, "job:1:8: found the end of the file inside a string; expected the closing double quote"},
		{"short escape", `{"a":"\u12"}`, `job:1:7: found \u without four hexadecimal digits after it`},
		{"signed escape", `{"a":"\u+123"}`, `job:1:7: found \u without four hexadecimal digits after it`},
		{"first half alone", `{"a":"\ud83d"}`, `job:1:7: found \ud83d, ` + pair},
		{"second half alone", `{"a":"é\uDE00"}`, `job:1:8: found \uDE00, ` + pair},
		{"first half twice", `{"a":"\ud83d\ud83d"}`, `job:1:7: found \ud83d, ` + pair},
		{"byte that is not UTF-8", "{\"a\":\n\"\xff\"}", "job:2:2: found byte 0xFF, which is not UTF-8; save the file as UTF-8"},
	} {
		doc, err := ReadJSON("job", []byte(c.in), Limits{})
		if err == nil {
			t.Errorf("%s: read as\n%s", c.name, outline(doc.Root))
			continue
		}
		if err.Error() != c.want {
			t.Errorf("%s:\n got %s\nwant %s", c.name, err, c.want)
		}
		checkError(t, err, c.in)
	}
}

// decodeJSON is what encoding/json makes of a text that holds one value.
func decodeJSON(data []byte) (any, error) {
	d := json.NewDecoder(bytes.NewReader(data))
	d.UseNumber()
	var v any
	if err := d.Decode(&v); err != nil {
		return nil, err
	}
	if _, err := d.Token(); err != io.EOF {
		return nil, io.ErrUnexpectedEOF
	}
	return v, nil
}

// RFC 8259, clause by clause: what it allows is read as encoding/json reads
// it, what it forbids is refused by both.
func TestJSONAgreesWithTheStandardLibrary(t *testing.T) {
	for _, c := range []struct {
		clause string
		good   []string
		bad    []string
	}{
		{"2: structure and white space",
			[]string{"{}", " \t\r\n{ \t\r\n} \t\r\n", "{\"a\"\n:\n1\n,\n\"b\":2}"},
			[]string{"", " ", "{", "}", "{}x", "{} {}", "\f{}", "\u00a0{}", "{}\x00", "{\"a\":1\v}"}},
		{"3: values",
			[]string{`{"a":true,"b":false,"c":null}`, `{"a":[true,false,null]}`},
			[]string{`{"a":TRUE}`, `{"a":truE}`, `{"a":tru}`, `{"a":true1}`, `{"a":falsefalse}`, `{"a":undefined}`}},
		{"4: objects",
			[]string{`{"":1}`, `{"a":{}}`, `{"a":{"a":{"a":1}}}`, `{"a b":1,"a  b":2}`, `{"\u0000":1}`},
			[]string{`{"a"}`, `{"a":}`, `{"a",1}`, `{"a":1,}`, `{,"a":1}`, `{"a":1;"b":2}`, `{a:1}`, `{'a':1}`, `{null:1}`, `{"a":1 "b":2}`, `{"a"::1}`, `{"a":1}}`}},
		{"5: arrays",
			[]string{`{"a":[]}`, `{"a":[1,[2,[3]]]}`, `{"a":[ ]}`, `{"a":["",{},[]]}`},
			[]string{`{"a":[1,]}`, `{"a":[,1]}`, `{"a":[1 2]}`, `{"a":[1,,2]}`, `{"a":[}`, `{"a":[1}`, `{"a":]}`, `{"a":[:]}`}},
		{"6: numbers",
			[]string{`{"a":0}`, `{"a":-0}`, `{"a":-0.0e-0}`, `{"a":10}`, `{"a":1.25}`, `{"a":1e5}`, `{"a":1E+05}`, `{"a":12345678901234567890}`, `{"a":0.10}`, `{"a":-1.5e-10}`},
			[]string{`{"a":01}`, `{"a":-01}`, `{"a":00}`, `{"a":+1}`, `{"a":.5}`, `{"a":-.5}`, `{"a":5.}`, `{"a":5.e3}`, `{"a":1e}`, `{"a":1e+}`, `{"a":1e1.5}`, `{"a":-}`, `{"a":--1}`, `{"a":0x1}`, `{"a":1_0}`, `{"a":NaN}`, `{"a":Infinity}`, `{"a":-Infinity}`, `{"a":1 0}`, "{\"a\":\u0661}"}},
		{"7: strings",
			[]string{`{"a":""}`, `{"a":"\"\\\/\b\f\n\r\t"}`, `{"a":"\u00e9\u20AC"}`, `{"a":"\ud83d\ude00"}`, `{"a":"\u2028"}`, "{\"a\":\"\u2028\x7f\u0085\ufeff\uffff\"}", `{"a":"/<>&'"}`, `{"a":"\u0000x"}`, `{"a":"x\uDBFF\uDFFFy"}`},
			[]string{`{"a":"}`, `{"a":'x'}`, "{\"a\":\"\n\"}", "{\"a\":\"\t\"}", "{\"a\":\"\x00\"}", "{\"a\":\"\x1f\"}", `{"a":"\x"}`, `{"a":"\'"}`, `{"a":"\u12"}`, `{"a":"\u123g"}`, `{"a":"\U0001F600"}`, `{"a":"\`, `{"a":"\"}`, `{"a":x}`}},
	} {
		for _, in := range c.good {
			want, err := decodeJSON([]byte(in))
			if err != nil {
				t.Fatalf("%s: %s: encoding/json: %v", c.clause, in, err)
			}
			doc := mustRead(t, ReadJSON, in)
			if got := doc.Root.Value(); !reflect.DeepEqual(got, want) {
				t.Errorf("%s: %s: got %#v, want %#v", c.clause, in, got, want)
			}
			checkPlaces(t, doc, in)
		}
		for _, in := range c.bad {
			if _, err := decodeJSON([]byte(in)); err == nil {
				t.Fatalf("%s: %s: encoding/json reads it", c.clause, in)
			}
			_, err := ReadJSON("job", []byte(in), Limits{})
			if err == nil {
				t.Errorf("%s: %s: read", c.clause, in)
				continue
			}
			checkError(t, err, in)
		}
	}
}

// What RFC 8259 leaves to the reader (sections 4, 6, 8.1, 8.2 and 9) and
// encoding/json takes, but a record must not hold.
func TestJSONStricterThanTheStandardLibrary(t *testing.T) {
	for _, in := range []string{
		`{"a":1,"a":2}`, `{"a":"\ud800"}`, `{"a":"\udc00\ud800"}`, "{\"a\":\"\xff\"}", `{"a":1e400}`, `{"a":1e-400}`,
		`[]`, `"a"`, `1`, `null`, `{"a":` + strings.Repeat("[", 64) + strings.Repeat("]", 64) + "}",
	} {
		if _, err := decodeJSON([]byte(in)); err != nil {
			t.Fatalf("%s: encoding/json: %v", in, err)
		}
		if _, err := ReadJSON("job", []byte(in), Limits{}); err == nil {
			t.Errorf("%s: read", in)
		}
	}
}
