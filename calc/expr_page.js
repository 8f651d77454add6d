// fettleCalc(units) reads what calc.Encoder writes; its Go comment is the
// specification. units is the table of units. The result has
//
//   evaluate(node, value)  the value of a node; value(key) gives that of a
//                          variable, undefined as long as it is not known
//   show(value)            a value as text, as Go prints it
//   formula(parts, node, value)  the formula with numbers, "1.02 mm − 0.11 mm =
//                          0.91 mm", from Encoder.AppendFormula's parts
//   count(quantity, unit)  a quantity counted in another unit of its dimension
//   compare(x, y)          -1, 0 or 1, by exact value
//   decimal(text)          the exact number that "1.02" is, undefined for nonsense
//   both(value, first)     a quantity or limits as Style shows them, [first, other];
//                          other is undefined where there is no partner. first is
//                          the system shown first, as in the table of units
//   partner(quantity)      the unit that the other system uses, undefined for none
//
// partners is what Encoder.AppendPartners writes; without it nothing is converted.
//
// Values: {num, unit, decimals} with num an exact number {n, d} of BigInts,
// {truth}, {word}, {low, high, target}, {list}. What cannot be worked out is
// thrown as {problem: "zero" | "unknown" | "large" | "arguments", key}.
const fettleCalc = (units, partners) => {
  "use strict";
  const EXACT = -1, SHOWN = 12, MAX_BITS = 8192, MAX_TRIG = 40;
  const stop = (problem, key) => { throw { problem, key }; };

  // Exact numbers.
  const abs = (n) => (n < 0n ? -n : n);
  const gcd = (a, b) => { while (b) [a, b] = [b, a % b]; return a; };
  const rat = (n, d) => {
    if (d < 0n) { n = -n; d = -d; }
    const g = gcd(abs(n), d);
    return g === 1n ? { n, d } : { n: n / g, d: d / g };
  };
  const whole = (n) => ({ n: BigInt(n), d: 1n });
  const parse = (text) => {
    const [n, d] = text.split("/");
    return { n: BigInt(n), d: d === undefined ? 1n : BigInt(d) };
  };
  const add = (a, b) => rat(a.n * b.d + b.n * a.d, a.d * b.d);
  const sub = (a, b) => rat(a.n * b.d - b.n * a.d, a.d * b.d);
  const mul = (a, b) => rat(a.n * b.n, a.d * b.d);
  const div = (a, b) => rat(a.n * b.d, a.d * b.n);
  const cmp = (a, b) => { const x = a.n * b.d, y = b.n * a.d; return x < y ? -1 : x > y ? 1 : 0; };
  const sign = (a) => (a.n < 0n ? -1 : a.n > 0n ? 1 : 0);
  const positive = (a) => ({ n: abs(a.n), d: a.d });
  const ten = (n) => 10n ** BigInt(n);
  const pow10 = (n) => (n < 0 ? { n: 1n, d: ten(-n) } : { n: ten(n), d: 1n });
  const bits = (n) => (n === 0n ? 0 : abs(n).toString(2).length);
  const sized = (a) => {
    if (bits(a.n) + bits(a.d) > MAX_BITS) stop("large");
    return a;
  };
  const floorDiv = (a, b) => { const q = a / b; return a % b !== 0n && (a < 0n) !== (b < 0n) ? q - 1n : q; };
  // scaled is r × 10^decimals as a whole number: half to even, down or up.
  const scaled = (r, decimals, how) => {
    const n = r.n * ten(decimals), q = floorDiv(n, r.d), rest = n - q * r.d;
    if (rest === 0n || how === "down") return q;
    if (how === "up") return q + 1n;
    const twice = 2n * rest;
    return twice < r.d || (twice === r.d && q % 2n === 0n) ? q : q + 1n;
  };
  const fixed = (r, decimals) => {
    const n = scaled(r, decimals), text = abs(n).toString().padStart(decimals + 1, "0");
    const point = text.length - decimals;
    return (n < 0n ? "-" : "") + text.slice(0, point) + (decimals ? "." + text.slice(point) : "");
  };
  // decimalsNeeded is undefined for a number that never ends.
  const decimalsNeeded = (r) => {
    let d = r.d, twos = 0, fives = 0;
    for (; d % 2n === 0n; d /= 2n) twos++;
    for (; d % 5n === 0n; d /= 5n) fives++;
    return d === 1n ? Math.max(twos, fives) : undefined;
  };
  const magnitude = (r) => {
    if (r.n === 0n) return 0;
    const m = abs(r.n).toString().length - r.d.toString().length;
    return cmp(positive(r), pow10(m)) < 0 ? m - 1 : m;
  };

  // Units.
  const table = units.map(([name, plural, factor, offset, system, difference]) =>
    ({ name, plural, factor: parse(factor), offset: offset === null ? null : parse(offset), system, difference }));
  const isPoint = (u) => table[u].difference !== u;
  const quantity = (num, unit, decimals) => ({ num, unit, decimals });
  const base = (q) => {
    const u = table[q.unit], v = mul(q.num, u.factor);
    return u.offset ? add(v, u.offset) : v;
  };
  const count = (q, unit) => {
    if (q.unit === unit) return q;
    const from = table[q.unit], to = table[unit];
    const ratio = div(from.factor, to.factor);
    let num = mul(q.num, ratio);
    if (from.offset) num = add(num, div(from.offset, to.factor));
    if (to.offset) num = sub(num, div(to.offset, to.factor));
    if (q.decimals === EXACT) return quantity(num, unit, EXACT);
    let s = 0;
    while (s > -SHOWN && cmp(pow10(1 - s), ratio) <= 0) s--;
    while (s < SHOWN && cmp(pow10(-s), ratio) > 0) s++;
    return quantity(num, unit, Math.min(Math.max(0, q.decimals + s), Math.max(SHOWN, q.decimals)));
  };
  const compare = (x, y) => (x.unit === y.unit ? cmp(x.num, y.num) : cmp(base(x), base(y)));

  // Arithmetic with units and decimals.
  const sum = (x, y, of) => {
    let unit = x.unit;
    if (isPoint(x.unit) && isPoint(y.unit)) {
      y = count(y, x.unit);
      unit = table[x.unit].difference;
    } else if (isPoint(x.unit)) {
      y = count(y, table[x.unit].difference);
    } else if (isPoint(y.unit)) {
      unit = y.unit;
      x = count(x, table[y.unit].difference);
    } else {
      y = count(y, x.unit);
    }
    return quantity(sized(of(x.num, y.num)), unit, Math.max(x.decimals, y.decimals));
  };
  const digits = (q) => (q.decimals === EXACT ? EXACT : Math.max(1, magnitude(q.num) + 1 + q.decimals));
  const decimalsFor = (r, n) => (n === EXACT ? EXACT : Math.min(Math.max(n - 1 - magnitude(r), 0), SHOWN));
  const times = (x, k, of) => {
    const num = sized(of(x.num, base(k)));
    let d = x.decimals;
    if (d === EXACT) d = decimalsFor(num, digits(k));
    else if (num.n !== 0n && cmp(mul(positive(num), whole(10)), positive(x.num)) < 0) d = Math.max(d, decimalsFor(num, 2));
    return quantity(num, x.unit, d);
  };
  const product = (x, y, candidates, of) => {
    const factor = of(table[x.unit].factor, table[y.unit].factor);
    const system = table[x.unit].system || table[y.unit].system;
    let unit = candidates.find((u) => cmp(table[u].factor, factor) === 0);
    if (unit === undefined) unit = candidates.find((u) => table[u].system === system);
    if (unit === undefined) unit = candidates[0];
    const num = sized(div(of(base(x), base(y)), table[unit].factor));
    let a = digits(x), b = digits(y);
    if (a === EXACT) a = b;
    if (b === EXACT) b = a;
    return quantity(num, unit, decimalsFor(num, a === EXACT ? EXACT : Math.max(Math.min(a, b), 3)));
  };
  const nonzero = (q) => { if (base(q).n === 0n) stop("zero"); return q; };

  // Functions.
  const pick = (list, way) => list.reduce((best, q) => (compare(q, best) * way > 0 ? q : best));
  const toStep = (how) => ([q, step]) => {
    const unit = table[q.unit].difference, s = count(step, unit);
    if (s.num.n <= 0n) stop("arguments");
    const n = scaled(div(q.num, s.num), 0, how);
    const needed = step.unit === unit ? decimalsNeeded(s.num) : undefined;
    return quantity(mul({ n, d: 1n }, s.num), q.unit, needed === undefined ? s.decimals : needed);
  };
  const functions = {
    min: (list) => pick(list, -1),
    max: (list) => pick(list, 1),
    spread: (list) => sum(pick(list, 1), pick(list, -1), sub),
    sum: (list) => list.reduce((a, b) => sum(a, b, add)),
    mean: (list) => {
      const same = list.map((q) => count(q, list[0].unit));
      const total = same.map((q) => q.num).reduce(add);
      return quantity(div(total, whole(list.length)), list[0].unit, Math.max(...same.map((q) => q.decimals)));
    },
    abs: ([q]) => quantity(positive(q.num), q.unit, q.decimals),
    round: toStep("even"),
    round_up: toStep("up"),
    round_down: toStep("down"),
  };

  // Angles: correctly rounded, by Taylor series in whole numbers.
  const pi = (n) => {
    const unit = ten(n);
    const arctan = (x) => {
      let total = 0n, power = unit / x;
      for (let k = 1n; power !== 0n; k += 2n, power /= -(x * x)) total += power / k;
      return total;
    };
    return 16n * arctan(5n) - 4n * arctan(239n);
  };
  const series = (deg, n, cosine) => {
    const guard = 8, unit = ten(n + guard);
    const x = (pi(n + guard) * deg.n) / (deg.d * 180n), square = (x * x) / unit;
    let term = cosine ? unit : x, total = 0n;
    for (let k = cosine ? 0n : 1n; term !== 0n; k += 2n) {
      total += term;
      term = (term * square) / unit / -((k + 1n) * (k + 2n));
    }
    return total / ten(guard);
  };
  const settle = (decimals, near) => {
    for (let n = decimals + 10; n <= 4000; n *= 2) {
      const unit = ten(n - decimals);
      const [a, b] = near(n).map((v) => floorDiv(v + unit / 2n, unit));
      if (a === b) return rat(a, ten(decimals));
    }
    return stop("large");
  };
  const quarter = (deg) => {
    const turns = floorDiv(deg.n, deg.d * 90n);
    const rest = sub(deg, { n: turns * 90n, d: 1n });
    return [Number(((turns % 4n) + 4n) % 4n), rest];
  };
  const is = (deg, n) => cmp(deg, whole(n)) === 0;
  const sine = (deg, decimals) => {
    let [turns, rest] = quarter(deg);
    const way = turns >= 2 ? -1n : 1n;
    if (turns % 2) rest = sub(whole(90), rest);
    if (is(rest, 0)) return whole(0);
    if (is(rest, 90)) return { n: way, d: 1n };
    if (is(rest, 30)) return decimals === 0 ? whole(0) : { n: way, d: 2n };
    const r = settle(decimals, (n) => { const s = series(rest, n, false); return [s - 2n, s + 2n]; });
    return { n: way * r.n, d: r.d };
  };
  const tangent = (deg, decimals) => {
    let [turns, rest] = quarter(deg);
    const way = turns % 2 ? -1n : 1n;
    if (turns % 2) rest = sub(whole(90), rest);
    if (is(rest, 0)) return whole(0);
    if (is(rest, 90)) return stop("zero");
    if (is(rest, 45)) return { n: way, d: 1n };
    const r = settle(decimals, (n) => {
      const s = series(rest, n, false), c = series(rest, n, true), unit = ten(n);
      if (c <= 2n) return [0n, 10n * unit];
      return [((s - 2n) * unit) / (c + 2n), ((s + 2n) * unit) / (c - 2n) + 1n];
    });
    return { n: way * r.n, d: r.d };
  };
  const one = 0;
  const ofAngle = (f) => ([angle, places]) => {
    const p = base(places);
    if (p.d !== 1n || p.n < 0n || p.n > BigInt(MAX_TRIG)) stop("arguments");
    return quantity(f(base(angle), Number(p.n)), one, Number(p.n));
  };
  functions.sin = ofAngle(sine);
  functions.cos = ofAngle((deg, decimals) => sine(add(deg, whole(90)), decimals));
  functions.tan = ofAngle(tangent);

  // Nodes.
  const orders = { "<": (c) => c < 0, "<=": (c) => c <= 0, ">": (c) => c > 0, ">=": (c) => c >= 0, "==": (c) => c === 0, "!=": (c) => c !== 0 };
  const flat = (list) => list.flatMap((v) => (v.list ? v.list : [v]));
  const evaluate = (node, value) => {
    const [op, ...args] = node;
    const at = (i) => evaluate(args[i], value);
    const optional = (i) => (args[i] ? at(i) : null);
    switch (op) {
      case "q": return quantity(parse(args[0]), args[1], args[2]);
      case "t": return { truth: args[0] };
      case "w": return { word: args[0] };
      case "v": {
        const v = value(args[0]);
        return v === undefined ? stop("unknown", args[0]) : v;
      }
      case "lim": return { low: optional(0), high: optional(1), target: optional(2) };
      case "l": return { list: args.map((_, i) => at(i)) };
      case "neg": { const q = at(0); return quantity({ n: -q.num.n, d: q.num.d }, q.unit, q.decimals); }
      case "not": return { truth: !at(0).truth };
      case "+": return sum(at(0), at(1), add);
      case "-": return sum(at(0), at(1), sub);
      case "*k": return times(at(0), at(1), mul);
      case "k*": { const k = at(0); return times(at(1), k, mul); }
      case "/k": return times(at(0), nonzero(at(1)), div);
      case "*u": return product(at(0), at(1), args[2], mul);
      case "/u": return product(at(0), nonzero(at(1)), args[2], div);
      case "&&": return at(0).truth ? at(1) : { truth: false };
      case "||": return at(0).truth ? { truth: true } : at(1);
      case "?": return at(0).truth ? at(1) : at(2);
    }
    if (orders[op]) {
      const x = at(0), y = at(1);
      if (x.num) return { truth: orders[op](compare(x, y)) };
      return { truth: (x.word === y.word && x.truth === y.truth) === (op === "==") };
    }
    const list = flat(args.map((_, i) => at(i)));
    if (list.length === 0) stop("arguments");
    const result = functions[op](list);
    sized(result.num);
    return result;
  };

  // Text.
  const onRule = (r) => r.d <= 64n || r.d === 128n;
  const fraction = (r) => {
    const n = abs(r.n), w = n / r.d;
    return (r.n < 0n ? "-" : "") + (w ? w + " " : "") + (n % r.d) + "/" + r.d;
  };
  const fewest = (r, n) => { // decimals for n significant digits, no zeros at the end
    let d = n, x = positive(r);
    for (; d > 0 && cmp(x, whole(10)) >= 0; d--) x = div(x, whole(10));
    x = positive(r);
    for (; d < SHOWN && x.n > 0n && cmp(x, whole(1)) < 0; d++) x = mul(x, whole(10));
    d = Math.max(0, d - 1);
    const needed = decimalsNeeded(r);
    return needed === undefined ? d : Math.min(d, needed);
  };
  const number = (q) => {
    if (q.decimals !== EXACT) return fixed(q.num, q.decimals);
    const needed = decimalsNeeded(q.num);
    if (needed === 0 || (needed <= SHOWN && (q.unit === one || !onRule(q.num)))) return fixed(q.num, needed);
    return onRule(q.num) ? fraction(q.num) : fixed(q.num, fewest(q.num, 4));
  };
  const label = (q) => {
    const u = table[q.unit];
    return !u.plural || (q.num.n > 0n && q.num.n <= q.num.d) ? u.name : u.plural;
  };
  // inward rounds one end of limits, with some more decimals; a fraction stays.
  const inward = (q, more, how) => {
    const needed = decimalsNeeded(q.num);
    let d = q.decimals;
    if (d === EXACT) {
      if (needed <= SHOWN || onRule(q.num)) return q;
      d = fewest(q.num, 4);
    }
    if (more > 0 && !(needed <= d)) d += more;
    return quantity(rat(scaled(q.num, d, how), ten(d)), q.unit, d);
  };
  // fitting is undefined where nothing with few decimals lies between the ends.
  const fitting = (low, high) => {
    for (let more = 0; more <= SHOWN; more++) {
      const l = inward(low, more, "up"), h = inward(high, more, "down");
      if (cmp(l.num, h.num) <= 0) return (label(l) === label(h) ? number(l) : show(l)) + " to " + show(h);
    }
    return undefined;
  };
  const showLimits = ({ low, high }) => {
    if (!low && !high) return "any value";
    if (!low) return "at most " + show(inward(high, 0, "down"));
    if (!high) return "at least " + show(inward(low, 0, "up"));
    return (low.unit === high.unit && fitting(low, high)) || show(low) + " to " + show(high);
  };
  const show = (v) => {
    if (v.num) {
      const l = label(v);
      return number(v) + (l === "" || l === "°" ? "" : " ") + l;
    }
    if (v.low !== undefined) return showLimits(v);
    if (v.list) return v.list.map(show).join(", ");
    if (v.truth !== undefined) return v.truth ? "yes" : "no";
    return v.word;
  };
  // Two systems, as Style shows them.
  const partner = (q) => {
    const found = ((partners && partners[q.unit]) || []).find(([least]) => least === null || cmp(positive(q.num), parse(least)) >= 0);
    return found && found[1];
  };
  const converted = (q, unit) => {
    if (!q) return q;
    const r = count(q, unit);
    return r.decimals === EXACT && r.num.d !== 1n ? quantity(r.num, unit, fewest(r.num, 4)) : r;
  };
  const both = (v, first) => {
    const arranged = (q, written, other) =>
      (other === undefined || !first || table[q.unit].system === first ? [written, other] : [other, written]);
    if (v.num) {
      const p = partner(v);
      return p === undefined ? [show(v)] : arranged(v, show(v), show(converted(v, p)));
    }
    if (!v.low && !v.high) return [""];
    const q = !v.high || (v.low && cmp(positive(v.low.num), positive(v.high.num)) > 0) ? v.low : v.high;
    const p = partner(q);
    if (p === undefined) return [showLimits(v)];
    let low = converted(v.low, p), high = converted(v.high, p);
    if (low && high && low.decimals !== EXACT && high.decimals !== EXACT) {
      const d = Math.max(low.decimals, high.decimals);
      low = quantity(low.num, p, d);
      high = quantity(high.num, p, d);
    }
    return arranged(q, showLimits(v), low && high ? fitting(low, high) : showLimits({ low, high }));
  };
  const BLANK = "____";
  const attempt = (node, value) => {
    try { return evaluate(node, value); } catch (e) { if (e.problem) return undefined; throw e; }
  };
  const formula = ([sign, ...parts], node, value) => {
    const left = parts.map((part) => {
      if (typeof part === "string") return part;
      const inner = part[0] === "()" ? part[1] : part, v = attempt(inner, value);
      if (v === undefined) return BLANK;
      return part !== inner && v.num && v.num.n < 0n ? "(" + show(v) + ")" : show(v);
    }).join("");
    const v = attempt(node, value), result = v === undefined ? BLANK : show(v);
    return left === result ? left : left + sign + result;
  };
  const decimal = (text) => {
    const m = /^(-?)(\d{1,30})(?:\.(\d{1,30}))?$/.exec(text.trim().replace("−", "-"));
    if (!m) return undefined;
    const places = (m[3] || "").length;
    return rat(BigInt(m[1] + m[2] + (m[3] || "")), ten(places));
  };
  return { evaluate, show, formula, count, compare, decimal, both, partner };
};
