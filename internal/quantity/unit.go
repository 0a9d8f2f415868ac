package quantity

import (
	"fmt"
	"math/big"
	"slices"
	"strings"
)

// unit is one row of the table, ready for use.
type unit struct {
	dimension Dimension
	symbol    string
	factor    *big.Rat // one itself for 1
	offset    *big.Rat // nil for 0
	places    int

	plain  bool    // values are written by float64 arithmetic where they can be
	approx float64 // factor, as near as a float64 comes
	spaced string  // symbol after a blank
}

// A Unit is one that numbers are written in. The zero Unit is none.
type Unit struct{ row *unit }

// UnitNamed is a unit by its symbol, the first that there is of any dimension:
// "%" is one of ratios and of percent alike, see Compute. It is the zero Unit
// where there is none.
func UnitNamed(symbol string) Unit { return bySymbol[symbol] }

var bySymbol = func() map[string]Unit {
	all := map[string]Unit{}
	for _, dim := range dimensionOrder {
		for _, u := range families[dim].units {
			if _, taken := all[u.symbol]; !taken {
				all[u.symbol] = Unit{u}
			}
		}
	}
	return all
}()

// String is the symbol, "" of the zero Unit.
func (u Unit) String() string {
	if u.row == nil {
		return ""
	}
	return u.row.symbol
}

// of is the unit of this symbol in another dimension, the SI unit where it has
// none.
func (u Unit) of(dim Dimension) (*unit, error) {
	if u.row != nil && u.row.dimension == dim {
		return u.row, nil
	}
	f := families[dim]
	if f == nil {
		return nil, unknownDimension(dim)
	}
	if i := slices.IndexFunc(f.units, func(other *unit) bool { return other.symbol == u.String() }); i >= 0 {
		return f.units[i], nil
	}
	return f.units[0], nil
}

// toSI gives a value in u in SI, which is the value itself where they are the
// same.
func (u *unit) toSI(value *big.Rat) *big.Rat {
	switch {
	case u.offset != nil:
		value = new(big.Rat).Add(value, u.offset)
		return value.Mul(value, u.factor)
	case u.factor != one:
		return new(big.Rat).Mul(value, u.factor)
	}
	return value
}

// fromSI gives a new value in u. It is exact, like toSI.
func (u *unit) fromSI(si *big.Rat) *big.Rat {
	value := new(big.Rat).Set(si)
	if u.factor != one {
		value.Quo(value, u.factor)
	}
	if u.offset != nil {
		value.Sub(value, u.offset)
	}
	return value
}

// family holds the units of one dimension.
type family struct {
	dimension Dimension
	units     []*unit          // SI first, then as the table has them
	byName    map[string]*unit // every spelling, as written and normalised
}

var families = readTable()

func readTable() map[Dimension]*family {
	all := make(map[Dimension]*family, len(dimensionOrder))
	for _, r := range table {
		f := all[r.dimension]
		if f == nil {
			f = &family{dimension: r.dimension, byName: map[string]*unit{}}
			all[r.dimension] = f
		}
		u := &unit{dimension: r.dimension, symbol: r.symbol, spaced: " " + r.symbol, factor: one, places: r.places}
		if r.factor != "1" {
			u.factor = product(r.factor)
		}
		if offset, ok := offsets[r.symbol]; ok {
			u.offset = product(offset)
		}
		u.approx, _ = u.factor.Float64()
		u.plain = r.dimension != Time && r.dimension != Date && r.dimension != Temperature
		f.units = append(f.units, u)
		for _, name := range r.spellings() {
			f.byName[name] = u
			if key := normalise(name); key != "" {
				f.byName[key] = u
			}
		}
	}
	return all
}

// spellings are the symbol and the other names of the unit.
func (r row) spellings() []string {
	if r.names == "" {
		return []string{r.symbol}
	}
	return append(strings.Split(r.names, "|"), r.symbol)
}

// product multiplies exact numbers written one after another.
func product(numbers string) *big.Rat {
	result := big.NewRat(1, 1)
	for _, text := range strings.Fields(numbers) {
		x, _ := new(big.Rat).SetString(text)
		result.Mul(result, x)
	}
	return result
}

// straight lowers raised digits, straightens curly and prime marks, and drops
// full stops, degree signs and carets.
var straight = strings.NewReplacer(
	"²", "2", "³", "3", "¹", "1", "⁻", "-", "−", "-", "µ", "u", "μ", "u",
	"’", "'", "‘", "'", "′", "'", "”", `"`, "“", `"`, "″", `"`, "℃", "c", "℉", "f",
	"·", " ", "⋅", " ", "*", " ", ".", "", "^", "", "°", "", "º", "",
)

// normalise brings the spellings of a unit together: straight marks, lower case,
// one space between words and none beside a stroke. No two units of a dimension
// differ by case alone.
func normalise(name string) string {
	words := strings.Join(strings.Fields(strings.ToLower(straight.Replace(name))), " ")
	return strings.ReplaceAll(strings.ReplaceAll(words, " /", "/"), "/ ", "/")
}

// lookUp knows a unit by any of its spellings.
func (f *family) lookUp(name string) (u *unit, ok bool) {
	if u, ok = f.byName[name]; !ok && name != "" {
		u, ok = f.byName[normalise(name)]
	}
	return u, ok
}

// find is lookUp with an error that says what to write instead.
func (f *family) find(name string) (*unit, error) {
	if u, ok := f.lookUp(name); ok {
		return u, nil
	}
	return nil, f.unknown(name)
}

// unknown says why name is no unit of this dimension.
func (f *family) unknown(name string) error {
	if name == "" {
		return fmt.Errorf("the unit is missing; write one of %s", f.list())
	}
	if text, ok := advice[f.dimension][normalise(name)]; ok {
		return fmt.Errorf("the unit %q will not do: %s", name, text)
	}
	if dim := knownTo(name); dim != "" {
		return fmt.Errorf("%q is a unit of %s, not of %s; write one of %s", name, dim, f.dimension, f.list())
	}
	return fmt.Errorf("the unit %q is not known; write one of %s", name, f.list())
}

// knownTo is the first dimension that has a unit of this name, or "".
func knownTo(name string) Dimension {
	key := normalise(name)
	for _, dim := range dimensionOrder {
		if families[dim].byName[key] != nil && dim != Time && dim != Date {
			return dim
		}
	}
	return ""
}

// list names the units for an error text, without the bare "1", which nobody
// should be told to write behind a number.
func (f *family) list() string {
	symbols := slices.DeleteFunc(Units(f.dimension), func(symbol string) bool { return symbol == "1" })
	return strings.Join(symbols, ", ")
}
