package radon

import "testing"

func BenchmarkCheckDuplicates(b *testing.B) {
	x, y := Result{Value: 162.8}, Result{Value: 129.5}
	for b.Loop() {
		must[Pair](b)(CheckDuplicates(x, y, 148))
	}
}

func BenchmarkReportPicocuries(b *testing.B) {
	for b.Loop() {
		ReportPicocuries(146.15)
	}
}

func BenchmarkContiguousHours96(b *testing.B) {
	for b.Loop() {
		must[Span](b)(ContiguousHours(Span{0, 96 * hour}, 22*hour, []Span{{40 * hour, 41 * hour}}))
	}
}

func BenchmarkChainActivity(b *testing.B) {
	halfLives := []float64{halfLifeRn222, halfLifePo218, halfLifePb214, halfLifeBi214}
	for b.Loop() {
		must[[]float64](b)(chainActivity([]float64{1, 0, 0, 0}, halfLives, 3600))
	}
}

func BenchmarkTwelveMonths500Days(b *testing.B) {
	var log []workerDay
	for i := range 500 {
		log = append(log, workerDay{"reyes", float64(i) * 24 * hour, 0.004})
	}
	for b.Loop() {
		must[[]workerDay](b)(twelveMonths(log))
	}
}
