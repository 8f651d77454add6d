package joint

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestCrissCross(t *testing.T) {
	for _, c := range []struct {
		layout Layout
		want   []int
	}{
		// legacy cross pattern of ASME PCC-1, from memory
		{Circle(4), []int{1, 3, 2, 4}},
		{Circle(8), []int{1, 5, 3, 7, 2, 6, 4, 8}},
		{Circle(16), []int{1, 9, 5, 13, 3, 11, 7, 15, 2, 10, 6, 14, 4, 12, 8, 16}},
		{Circle(20), []int{1, 11, 6, 16, 3, 13, 8, 18, 5, 15, 10, 20, 2, 12, 7, 17, 4, 14, 9, 19}},
		// common practice, no source
		{Circle(1), []int{1}}, {Circle(2), []int{1, 2}}, {Circle(3), []int{1, 2, 3}},
		{Circle(5), []int{1, 3, 5, 2, 4}}, {Circle(6), []int{1, 4, 2, 5, 3, 6}},
		{Circle(10), []int{1, 6, 3, 8, 5, 10, 2, 7, 4, 9}},
		{Row(4), []int{2, 3, 1, 4}}, {Row(5), []int{3, 2, 4, 1, 5}},
		{Grid(2, 2), []int{1, 4, 2, 3}},
		{Grid(2, 5), []int{3, 8, 2, 9, 4, 7, 1, 10, 5, 6}},
		{Grid(3, 3), []int{5, 2, 8, 4, 6, 1, 9, 3, 7}},
	} {
		got, p := CrissCross(c.layout)
		require.Nil(t, p)
		require.Equal(t, c.want, got)
	}
	for _, l := range []Layout{Circle(0), Circle(-4), Circle(1 << 40), Grid(1<<31, 1<<31), {}, {-1, 3}, Grid(500, 500)} {
		_, p := CrissCross(l)
		require.NotNil(t, p)
		require.Len(t, JudgePattern(l, []int{1}), 1)
	}
}

func TestJudgePattern(t *testing.T) {
	for _, c := range []struct {
		layout Layout
		order  []int
		at     int // -1: sound
		says   string
	}{
		{Circle(4), []int{1, 3, 2, 4}, -1, ""}, // must stay silent
		{Circle(4), []int{1, 3, 4, 2}, -1, ""},
		{Circle(4), []int{2, 4, 3, 1}, -1, ""},
		{Circle(3), []int{1, 2, 3}, -1, ""},
		{Circle(5), []int{1, 3, 5, 2, 4}, -1, ""},
		{Circle(5), []int{1, 4, 2, 5, 3}, -1, ""},
		{Circle(6), []int{1, 4, 6, 3, 5, 2}, -1, ""},
		{Circle(6), []int{1, 3, 5, 2, 4, 6}, -1, ""}, // by thirds
		{Circle(8), []int{1, 5, 2, 6, 3, 7, 4, 8}, -1, ""},
		{Circle(12), []int{1, 7, 4, 10, 2, 8, 5, 11, 3, 9, 6, 12}, -1, ""}, // ASME PCC-1, from memory
		{Circle(24), []int{1, 13, 7, 19, 4, 16, 10, 22, 2, 14, 8, 20, 5, 17, 11, 23, 3, 15, 9, 21, 6, 18, 12, 24}, -1, ""},
		{Circle(4), []int{1, 2, 3, 4}, 1, "Places 1 and 2 are neighbours"},
		{Circle(4), []int{1, 4, 2, 3}, 1, "Places 1 and 4 are neighbours"}, // round the end
		{Circle(6), []int{1, 4, 2, 5, 6, 3}, 4, "Places 5 and 6 are neighbours"},
		{Circle(6), []int{1, 2, 3, 4, 5, 6}, 1, "neighbours"},
		{Circle(8), []int{1, 3, 5, 7, 2, 4, 6, 8}, 2, "Places 1, 3 and 5 follow each other round one side"},
		{Circle(4), []int{1, 3, 3, 4}, 2, "Place 3 comes twice"},
		{Circle(4), []int{1, 3, 2}, 2, "Place 4 is left out"},
		{Circle(4), []int{1, 3, 2, 5}, 3, "There is no place 5"},
		{Circle(4), nil, -2, "Place 1 is left out"},
		{Row(4), []int{2, 3, 1, 4}, -1, ""},
		{Row(4), []int{3, 2, 4, 1}, -1, ""},
		{Row(5), []int{3, 4, 2, 1, 5}, -1, ""},
		{Row(4), []int{1, 2, 3, 4}, 0, "starts at place 1, and place 2"},
		{Row(5), []int{3, 2, 1, 4, 5}, 2, "Place 1 is tightened before place 4"},
		{Grid(2, 2), []int{1, 4, 3, 2}, -1, ""},
		{Grid(2, 2), []int{1, 2, 4, 3}, 1, "Places 1 and 2 are neighbours"},
		{Grid(2, 5), []int{3, 8, 7, 2, 4, 9, 6, 1, 5, 10}, -1, ""}, // a spiral
		{Grid(2, 5), []int{1, 6, 2, 7, 3, 8, 4, 9, 5, 10}, 0, "starts at place 1"},
		{Grid(3, 4), []int{6, 7, 5, 8, 2, 3, 10, 11, 1, 4, 9, 12}, -1, ""}, // spacings unknown: either way out
		{Grid(3, 4), []int{6, 7, 2, 10, 3, 11, 5, 8, 1, 12, 4, 9}, -1, ""},
		{Grid(3, 3), []int{5, 1, 9, 3, 7, 2, 8, 4, 6}, 1, "Place 1 is tightened before place 2"},
	} {
		faults := JudgePattern(c.layout, c.order)
		if c.at == -1 {
			require.Empty(t, faults, "%v %v", c.layout, c.order)
			continue
		}
		require.NotEmpty(t, faults, "%v %v", c.layout, c.order)
		if c.at >= 0 {
			require.Equal(t, c.at, faults[0].At, "%v %v: %s", c.layout, c.order, faults[0].Message)
		}
		require.Contains(t, faults[0].Message, c.says)
		require.NotEmpty(t, faults[0].Reason)
	}
}

func TestOwnPatternsAreSound(t *testing.T) {
	for n := 1; n <= 100; n++ {
		for _, l := range []Layout{Circle(n), Row(n)} {
			order, p := CrissCross(l)
			require.Nil(t, p)
			require.Empty(t, JudgePattern(l, order), "%v", order)
		}
	}
	rapid.Check(t, func(r *rapid.T) {
		l := Grid(rapid.IntRange(1, 12).Draw(r, "rows"), rapid.IntRange(1, 12).Draw(r, "columns"))
		order, p := CrissCross(l)
		require.Nil(r, p)
		require.Empty(r, JudgePattern(l, order), "%v", order)
	})
}

// Turning or mirroring a circle changes nothing about an order; going round it
// one by one is unsound from every start.
func TestCircleHasNoBeginning(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		n := rapid.IntRange(4, 24).Draw(r, "n")
		places := make([]int, n)
		for i := range places {
			places[i] = i + 1
		}
		order := rapid.Permutation(places).Draw(r, "order")
		by, mirror := rapid.IntRange(0, n-1).Draw(r, "by"), rapid.Bool().Draw(r, "mirror")
		turned, round := make([]int, n), make([]int, n)
		for i, p := range order {
			if mirror {
				p = n + 1 - p
			}
			turned[i] = (p-1+by)%n + 1
			round[i] = (i+by)%n + 1
		}
		a, b := JudgePattern(Circle(n), order), JudgePattern(Circle(n), turned)
		require.Equal(r, len(a), len(b))
		for i := range a {
			require.Equal(r, a[i].At, b[i].At)
		}
		require.NotEmpty(r, JudgePattern(Circle(n), round))
	})
}
