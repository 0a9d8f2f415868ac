package arch

// A room is one package of this module and the packages of this module that
// its code (not its tests) may import. Names are paths in the repository with
// a leading "internal/" left out; lists are separated by blanks.
type room struct {
	name string
	uses string
}

// rooms stands in the order in which a record passes through them: a row may
// name only rows above it. Edit it here, then run
//
//	go test ./internal/arch -update
var rooms = []room{
	{"place", ""},
	{"finding", ""},
	{"quantity", ""},
	{"record", "place quantity"},
	{"schema", ""},
	{"validate", "place finding record schema"},
	{"airflow", ""},
	{"geometry", ""},
	{"radon", "quantity"},
	{"derive", "quantity place record airflow geometry radon"},
	{"policy", ""},
	{"rulebook", "finding quantity record policy schema"},
	{"judge", "place finding quantity record rulebook"},
	{"outcome", "finding"},
	{"pipeline", "place finding record schema validate derive rulebook judge outcome"},
	{"report", "finding place"},
	{"drawing", "place quantity airflow record"},
	{"settings", "finding record"},
	{"archive", "finding record"},
	{"replace", ""},
	{"gate", "replace"},
	{"summary", "finding place record"},
	{"form", "record"},
	{"intake", "finding place quantity record"},
	{"cmd/slablint", "place finding quantity record schema rulebook outcome pipeline report drawing archive gate replace settings summary form intake"},
	{"scaffold", ""},
	{"look", ""},
	{"arch", ""},
}

// anyTest stands for the tests of every package.
const anyTest = "any"

// A foreign is a module of others and the few rooms that may import it, so
// that replacing it touches one place.
type foreign struct {
	module string
	code   string // rooms whose code may import it
	tests  string // rooms whose tests may import it besides, or anyTest
	why    string
}

var foreigns = []foreign{
	{"github.com/bmatcuk/doublestar/v4", "settings", "", "matches file names as git does, with ** for any depth"},
	{"github.com/chromedp/cdproto", "", "report", "the commands and events of the browser that chromedp drives"},
	{"github.com/chromedp/chromedp", "look", "report cmd/slablint", "looks at the pages in a real browser: light, dark, telephone, paper"},
	{"github.com/google/go-cmp", "", anyTest, "shows where two values differ"},
	{"github.com/open-policy-agent/opa", "rulebook judge", "", "compiles, type-checks and evaluates the Rego rulebook"},
	{"github.com/rogpeppe/go-internal", "", "cmd/slablint", "runs the program as a shell would, from scripts"},
	{"github.com/santhosh-tekuri/jsonschema/v5", "validate", "derive report rulebook settings", "checks a record, and in tests reports, profiles and settings, against the published JSON Schema"},
	{"github.com/schollz/progressbar/v3", "cmd/slablint", "", "the bar on a terminal while an archive is judged"},
	{"github.com/spf13/cobra", "cmd/slablint", "", "commands, flags and their help"},
	{"github.com/tetratelabs/wazero", "judge", "", "runs the compiled rulebook when there are many records"},
	{"go.yaml.in/yaml/v4", "record", "", "reads YAML into nodes that know where they stand"},
	{"github.com/xuri/excelize/v2", "intake", "", "reads XLSX workbooks"},
	{"golang.org/x/image", "drawing", "", "makes photos small with a good filter"},
	{"golang.org/x/term", "cmd/slablint", "", "tells a terminal from a file"},
	{"gonum.org/v1/gonum", "airflow", "", "interpolation along a fan's curve"},
	{"gonum.org/v1/plot", "drawing", "", "axes, curves, error bars and marks of the charts"},
}

// restricted are the standard packages that would let a result depend on
// something other than the record and the rulebook, with the rooms whose code
// may import them all the same.
var restricted = []foreign{
	{"math/rand", "", "", "same record, same bytes"},
	{"math/rand/v2", "", "", "same record, same bytes"},
	{"net", "", "", "a record never leaves the machine"},
	{"net/http", "", "", "a record never leaves the machine"},
	{"os/exec", "gate look", "", "git is the only other program that is run, and a browser in tests"},
	{"unsafe", "", "", "speed is not worth a wrong verdict"},
}
