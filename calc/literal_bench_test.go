package calc

import "testing"

func BenchmarkParseLiteral(b *testing.B) {
	for _, s := range []string{"24 N·m", "0.08..0.14 mm", "24 ± 2 N·m", "15 min", "1 1/16 in", "4 drops/min"} {
		b.Run(s, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if l, _ := ParseLiteral(s, Context{}); !l.Valid() {
					b.Fatal(s)
				}
			}
		})
	}
}

func BenchmarkStyle(b *testing.B) {
	l, _ := ParseLiteral("0.08..0.14 mm", Context{})
	style := Style{First: Metric}
	b.ReportAllocs()
	for b.Loop() {
		if style.Literal(l).Other == "" {
			b.Fatal("no partner")
		}
	}
}
