// fettleFit(problem) prepares a selective fit for the builder's page. It is the
// algorithm of fit.go, whose comment is the specification; a test holds the two
// together. Exact numbers are {n, d} of BigInts, d > 0, in one unit.
//
//   problem   {sizes: [{low, nominal, high, stock}], min, max, low, high, target,
//             buildUp, nearest}; low and high are null where the limit is open,
//             target is null for the middle or the only end
//   solve(reading)       the pick, {counts, pieces, total, result}, or null
//   neighbours(reading)  [thinner, thicker], each a pack or null
//
// It throws {problem: "pieces" | "limit" | "large"} where there is nothing to solve.
const fettleFit = (problem) => {
  "use strict";
  const WORK = 3e6;
  const stop = (what) => { throw { problem: what }; };
  const gcd = (a, b) => { while (b) [a, b] = [b, a % b]; return a < 0n ? -a : a; };
  const rat = (n, d) => { const g = gcd(n, d) || 1n; return { n: n / g, d: d / g }; };
  const add = (a, b) => rat(a.n * b.d + b.n * a.d, a.d * b.d);
  const sub = (a, b) => rat(a.n * b.d - b.n * a.d, a.d * b.d);
  const sign = (a, b) => (a < b ? -1 : a > b ? 1 : 0);

  const { sizes, low, high, buildUp, nearest } = problem;
  const held = sizes.reduce((sum, s) => sum + s.stock, 0);
  const least = problem.min, most = Math.min(problem.max, held);
  if (least < 0 || least > problem.max || least > held) stop("pieces");
  const target = problem.target || (low && high ? rat(low.n * high.d + high.n * low.d, 2n * low.d * high.d) : low || high);
  if (!target) stop("limit");

  // A pack that fills a gap is limited from above by the low end of the result.
  let above = low && sub(target, low), below = high && sub(high, target);
  if (buildUp) [above, below] = [below, above];

  // The grid: four times the least common denominator.
  let scale = 1n;
  for (const r of [...sizes.flatMap((s) => [s.low, s.nominal, s.high]), above, below]) {
    if (r) scale *= r.d / gcd(scale, r.d);
  }
  scale *= 4n;
  const steps = (r) => (r.n * scale) / r.d;
  // A kit of ordinary fineness is worked out in numbers: every sum is a whole one below 2^50.
  const size = (v) => (v < 0n ? -v : v);
  const widest = sizes.flatMap((s) => [s.low, s.high]).reduce((w, r) => (size(steps(r)) > w ? size(steps(r)) : w), 0n);
  const room = widest * BigInt(most + 1) + [above, below].reduce((w, r) => (r && size(steps(r)) > w ? size(steps(r)) : w), 0n);
  const FAR = 2n ** 51n - 1n;
  const small = room < 2n ** 49n;
  const cut = (v) => (v > FAR ? FAR : v < -FAR ? -FAR : v);
  const grid = small ? (v) => Number(cut(v)) : (v) => v;
  const zero = grid(0n);
  const up = above && grid(steps(above)), down = below && grid(steps(below));

  // Kinds of piece, thinnest first; of equally thick ones the last listed first.
  const kinds = sizes.map((s, i) => ({ index: i, stock: Math.min(s.stock, most), t: grid(steps(s.nominal)), lo: grid(steps(s.low)), hi: grid(steps(s.high)) }));
  kinds.sort((a, b) => sign(a.t, b.t) || b.index - a.index);
  kinds.forEach((k, i) => { k.rank = i && kinds[i - 1].t === k.t ? kinds[i - 1].rank : i; });

  // A pack is a chain, thickest kind first: count pieces of kind, then rest.
  const empty = { t: zero, lo: zero, hi: zero, pieces: 0, different: 0, kind: -1, count: 0, rest: null };
  const thickest = (pack) => {
    let count = 0, rank = -1;
    for (; pack.count && (rank < 0 || kinds[pack.kind].rank === rank); pack = pack.rest) {
      rank = kinds[pack.kind].rank;
      count += pack.count;
    }
    return { rank, count, rest: pack };
  };
  // The tie rule for packs that are equally near to the target.
  const order = (a, b) => {
    const early = a.pieces - b.pieces || a.different - b.different;
    if (early) return early;
    for (let x = a, y = b; ;) {
      const p = thickest(x), q = thickest(y);
      const c = q.rank - p.rank || q.count - p.count;
      if (c) return c;
      if (!p.count) break;
      [x, y] = [p.rest, q.rest];
    }
    for (let x = a, y = b; x.count && y.count; x = x.rest, y = y.rest) {
      const c = y.kind - x.kind || y.count - x.count;
      if (c) return c;
    }
    return 0;
  };

  // cells[k][j]: packs of k pieces of the first j kinds that can still be a pick,
  // by total; front[j]: those of all allowed numbers of pieces so far.
  let work = 0;
  const cells = [kinds.map(() => [empty]).concat([[empty]])];
  const front = cells[0].map(() => (least === 0 ? [empty] : []));
  const merged = (a, b) => {
    const out = [];
    for (let i = 0, j = 0; i < a.length || j < b.length;) {
      out.push(j === b.length || (i < a.length && a[i].t <= b[j].t) ? a[i++] : b[j++]);
    }
    return out;
  };
  const keep = (found, fewer) => {
    const out = [];
    for (const f of found.sort((a, b) => sign(a.t, b.t) || order(a, b))) {
      const inside = (o) => o.t === f.t && o.lo >= f.lo && o.hi <= f.hi;
      let beaten = false;
      for (let i = out.length - 1; i >= 0 && !beaten && out[i].t === f.t; i--) beaten = inside(out[i]);
      if (!beaten) beaten = (fewer.get(f.t) || []).some(inside);
      if (!beaten) out.push(f);
    }
    return out;
  };
  const level = (pieces) => {
    for (let k = cells.length; k <= pieces; k++) {
      const row = [[]];
      kinds.forEach((kind, j) => {
        const found = row[j].slice();
        let [t, lo, hi] = [zero, zero, zero];
        for (let c = 1; c <= Math.min(kind.stock, k); c++) {
          [t, lo, hi] = [t + kind.t, lo + kind.lo, hi + kind.hi];
          for (const p of cells[k - c][j]) {
            found.push({ t: p.t + t, lo: p.lo + lo, hi: p.hi + hi, pieces: p.pieces + c, different: p.different + 1, kind: j, count: c, rest: p });
          }
        }
        if ((work += found.length) > WORK) stop("large");
        const fewer = new Map();
        for (const p of front[j + 1]) fewer.set(p.t, (fewer.get(p.t) || []).concat([p]));
        row[j + 1] = keep(found, fewer);
      });
      if (k >= least) row.forEach((list, j) => { front[j] = merged(front[j], list); });
      cells.push(row);
    }
    return cells[pieces][kinds.length];
  };

  // position snaps a wanted total to the grid: even where it is on half a step of
  // the common denominator, odd between two of these.
  const position = (reading) => {
    const want = buildUp ? sub(target, reading) : sub(reading, target);
    const n = (scale / 2n) * want.n, rest = ((n % want.d) + want.d) % want.d;
    return grid(((n - rest) / want.d) * 2n + (rest ? 1n : 0n));
  };
  const search = (list, p) => {
    let i = 0, j = list.length;
    while (i < j) { const h = (i + j) >> 1; if (list[h].t >= p) j = h; else i = h + 1; }
    return i;
  };
  const accepts = (s, p) => (up === null || s.hi <= p + up) && (down === null || s.lo >= p - down);
  const pick = (list, p) => {
    const at = search(list, p);
    let thicker = null, thinner = null;
    for (let i = at; i < list.length && !thicker; i++) {
      if (up !== null && list[i].t > p + up) break;
      if (accepts(list[i], p)) thicker = list[i];
    }
    for (let i = at - 1; i >= 0; i--) {
      if (down !== null && list[i].t < p - down) break;
      if (thinner && list[i].t !== thinner.t) break;
      if (accepts(list[i], p)) thinner = list[i]; // of equal totals the first is met last
    }
    if (!thinner || !thicker) return thinner || thicker;
    const c = sign(thinner.t + thicker.t, p + p);
    return c ? (c < 0 ? thicker : thinner) : order(thicker, thinner) < 0 ? thicker : thinner;
  };
  const spelled = (pack, reading) => {
    if (!pack) return null;
    const counts = sizes.map(() => 0);
    for (let p = pack; p.count; p = p.rest) counts[kinds[p.kind].index] = p.count;
    const total = counts.reduce((sum, c, i) => add(sum, rat(sizes[i].nominal.n * BigInt(c), sizes[i].nominal.d)), { n: 0n, d: 1n });
    return { counts, pieces: pack.pieces, total, result: buildUp ? add(reading, total) : sub(reading, total) };
  };
  return {
    solve(reading) {
      const p = position(reading);
      if (nearest) {
        level(most);
        return spelled(pick(front[kinds.length], p), reading);
      }
      for (let k = least; k <= most; k++) {
        const found = pick(level(k), p);
        if (found) return spelled(found, reading);
      }
      return null;
    },
    neighbours(reading) {
      const p = position(reading);
      let thinner = null, thicker = null;
      for (let k = least; k <= most; k++) {
        const list = level(k);
        let i = 0;
        while (i < list.length && list[i].t <= p) i++;
        if (i < list.length && (!thicker || list[i].t < thicker.t)) thicker = list[i];
        if (i > 0) {
          const first = search(list, list[i - 1].t);
          if (!thinner || list[first].t > thinner.t) thinner = list[first];
        }
      }
      return [spelled(thinner, reading), spelled(thicker, reading)];
    },
  };
};
