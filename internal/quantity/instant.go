package quantity

import (
	"errors"
	"math/big"
	"strings"
	"time"
)

const (
	timeForm = "write it as 2026-03-01T09:00-05:00, with the offset from UTC, or Z for UTC itself"
	dateForm = "write it as 2026-03-01, year first"
)

var (
	errDate    = errors.New("there is no such day; " + dateForm)
	errTime    = errors.New("there is no such day and time; " + timeForm)
	errNoClock = errors.New("the time of day is missing; " + timeForm)
	errNoZone  = errors.New("the zone is missing; " + timeForm)
	errZone    = errors.New("the zone cannot be read; " + timeForm)
	errYear    = errors.New("the year is not one of 0000 to 9999")
)

// The first and the last second that a year of four digits can have.
var (
	firstInstant = big.NewRat(-62_167_219_200, 1)
	lastInstant  = big.NewRat(253_402_300_799, 1)
)

// parseDate reads a day into the seconds from 1970-01-01T00:00:00Z to the start
// of that day in UTC.
func parseDate(s string) (*big.Rat, error) {
	if !shaped(s, "0000-00-00") {
		return nil, errDate
	}
	t, err := time.ParseInLocation(time.DateOnly, s, time.UTC)
	if err != nil {
		return nil, errDate
	}
	return new(big.Rat).SetInt64(t.Unix()), nil
}

// parseTime reads an RFC 3339 time into seconds since 1970-01-01T00:00:00Z.
// Seconds may be left out and a blank may stand for the T. The zone is part of
// the text, so that the clock and zone table of the machine have no say.
func parseTime(s string) (*big.Rat, error) {
	const day, minute, second = len("2006-01-02"), len("2006-01-02T15:04"), len("2006-01-02T15:04:05")
	if shaped(s, "0000-00-00") {
		return nil, errNoClock
	}
	s = strings.ToUpper(s)
	if len(s) < minute || !shaped(s[:day], "0000-00-00") || s[day] != 'T' && s[day] != ' ' || !shaped(s[day+1:minute], "00:00") {
		return nil, errTime
	}
	seconds, zone := ":00", s[minute:]
	if strings.HasPrefix(zone, ":") {
		end := second
		if hasByte(s, end, '.') {
			end += 1 + countDigits(s[end+1:])
		}
		if len(s) < end || !shaped(s[minute:second], ":00") || end > second+len(".000000000") {
			return nil, errTime
		}
		seconds, zone = s[minute:end], s[end:]
	}
	if err := checkZone(zone); err != nil {
		return nil, err
	}
	t, err := time.ParseInLocation(time.RFC3339Nano, s[:day]+"T"+s[day+1:minute]+seconds+zone, time.UTC)
	if err != nil {
		return nil, errTime
	}
	value := big.NewRat(int64(t.Nanosecond()), 1_000_000_000)
	return value.Add(value, new(big.Rat).SetInt64(t.Unix())), nil
}

// checkZone accepts Z and the offsets in use, which reach from -12:00 to +14:00.
func checkZone(zone string) error {
	switch {
	case zone == "":
		return errNoZone
	case zone == "Z", (zone[0] == '+' || zone[0] == '-') && shaped(zone[1:], "00:00") && zone[1:] <= "14:00":
		return nil
	}
	return errZone
}

// shaped reports whether s looks like form, in which 0 stands for any digit.
func shaped(s, form string) bool {
	for i := range len(s) {
		if len(s) != len(form) || s[i] != form[i] && (form[i] != '0' || countDigits(s[i:]) == 0) {
			return false
		}
	}
	return s != ""
}

// instantText writes seconds since 1970 as a date or as an RFC 3339 time in UTC.
func instantText(dim Dimension, si *big.Rat) string {
	whole := new(big.Int).Div(si.Num(), si.Denom()) // rounds down, before 1970 too
	nanos := new(big.Rat).Sub(si, new(big.Rat).SetInt(whole))
	nanos.Mul(nanos, big.NewRat(1_000_000_000, 1))
	t := time.Unix(whole.Int64(), new(big.Int).Quo(nanos.Num(), nanos.Denom()).Int64()).UTC()
	if dim == Date {
		return t.Format(time.DateOnly)
	}
	return t.Format(time.RFC3339Nano)
}
