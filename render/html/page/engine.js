// fettleEngine(live, words) works out the values of one build, as package values
// of the Go program does: a test holds the two together. live is render.Live.
// It knows no document and keeps nothing but what it is given.
//
//   give({options, readings, pieces})  what is known: choices by option; lists of
//                      quantities by key; [{size, is}] by part. Replaces all.
//   result(key)        {value | pack, problem, remedy}; empty while not known
//   judge(key)         {verdict: "inside" | "outside" | undefined, limits}
//   when(nodes, place) true, false, or undefined while a reading is missing
//   say(n)             the value number n of live.says, undefined while not known
//   formula(key)       the formula with its numbers
//   read(key, text, unit)  {quantity, warning} or {refused}, both in words
//   quantity(text)     the quantity that "0.93 mm" is, undefined for nonsense
//   text(value, first) [first, other] in both systems
const fettleEngine = (live, words) => {
  "use strict";
  const calc = fettleCalc(live.units, live.partners);
  const EXACT = -1;
  const specs = new Map(live.values.map((v) => [v.key, { ...v, place: (/\["(.*)"\]$/s.exec(v.key) || [])[1] }]));
  const fits = new Map();
  let given, memo;
  const give = (known) => { given = known; memo = new Map(); };
  give({ options: live.options, readings: {}, pieces: {} });

  const say = (name, ...parts) => words[name].replace(/\{(\d)\}/g, (_, i) => parts[i]);
  const attempt = (node, place) => {
    try { return { value: calc.evaluate(node, at(place)) }; } catch (e) { if (e.problem) return e; throw e; }
  };
  const keyOf = (step, place) => (place === undefined ? step : step + '["' + place + '"]');
  // at gives the values of variables as seen from a place: "close.choose.pack.total["left"]".
  const at = (place) => (key) => {
    const [, name, where] = /^(.*?)(?:\["(.*)"\])?$/s.exec(key);
    if (name === "place") return { word: place || "" };
    if (name.startsWith("option.")) {
      const choice = given.options[name.slice(7)];
      return choice === undefined ? undefined : { word: choice };
    }
    const parts = name.split("."), step = parts.slice(0, 3).join("."), field = parts[3];
    const r = result(keyOf(step, where));
    return r.pack ? fieldOf(r.pack, field) : r.value;
  };
  const plain = (n) => ({ num: { n: BigInt(n), d: 1n }, unit: 0, decimals: EXACT });
  const fieldOf = (pack, name) => ({ total: pack.total, result: pack.result, count: plain(pack.count) }[name] || { word: listed(pack) });
  const listed = (pack) => (pack.count === 0 ? words.nothing : pack.lines.map((l) => l.count + " × " + l.label).join(", "));

  const when = (nodes, place) => {
    let all = true;
    for (const node of nodes || []) {
      const { value } = attempt(node, place);
      if (value === undefined) all = undefined;
      else if (value.truth === false) return false;
    }
    return all;
  };

  // Readings.
  const of = (name, list) => calc.evaluate([name, ...list.map((_, i) => ["v", String(i)])], (i) => list[i]);
  const taken = (how, list) => {
    if (list.length === 1) return list[0];
    switch (how) {
      case "mean": {
        const q = of("mean", list); // a mean is known finer than each of its readings
        return { num: q.num, unit: q.unit, decimals: q.decimals === EXACT ? EXACT : q.decimals + 1 };
      }
      case "largest": return of("max", list);
      case "smallest": return of("min", list);
    }
    return undefined;
  };
  const reading = (spec) => {
    const list = given.readings[spec.key];
    if (!list || !list.length) return {};
    const r = { value: taken(spec.reads.take, list) };
    if (list.length > 1 && spec.reads.within) {
      const apart = of("spread", list), within = calc.evaluate(spec.reads.within);
      if (calc.compare(apart, within) > 0) r.problem = say("apart", calc.show(apart), calc.show(within));
    }
    return r;
  };

  // Choices.
  const half = (a, b) => {
    const n = a.n * b.d + b.n * a.d, d = 2n * a.d * b.d;
    let [x, y] = [n < 0n ? -n : n, d];
    while (y) [x, y] = [y, x % y];
    return { n: n / x, d: d / x };
  };
  const asLimits = (v) => (v.num ? { low: v, high: v, target: v } : v);
  const kit = (spec, unit) => {
    let decimals = EXACT;
    const sizes = live.parts[spec.picks.part].sizes.map(({ label, is, held }) => {
      const l = asLimits(calc.evaluate(is)), size = { label, stock: held };
      for (const [name, q] of [["low", l.low], ["high", l.high], ["nominal", l.target]]) {
        if (!q) continue;
        const counted = calc.count(q, unit);
        size[name] = counted.num;
        decimals = Math.max(decimals, counted.decimals);
      }
      size.nominal = size.nominal || half(size.low, size.high);
      size.low = size.low || size.nominal;
      size.high = size.high || size.nominal;
      return size;
    });
    return { sizes, decimals };
  };
  // stocked leaves what measured pieces and earlier choices leave of the kit.
  const stocked = (spec, sizes, unit) => {
    let changed = false, tentative = false;
    const known = sizes.length;
    for (const { size, is } of given.pieces[spec.picks.part] || []) {
      const of = sizes.slice(0, known).find((s) => s.label === size && s.stock > 0);
      if (!of) continue;
      of.stock--;
      const { num } = calc.count(is, unit);
      sizes.push({ label: size + " (measured " + calc.show(is) + ")", size, low: num, nominal: num, high: num, stock: 1 });
      changed = true;
    }
    for (const key of spec.picks.before || []) {
      const { pack } = result(key), other = specs.get(key);
      if (!pack) {
        if (when(other.when, other.place) !== false) tentative = true;
        continue;
      }
      for (const line of pack.lines) {
        const size = sizes.find((s) => s.label === line.label);
        if (size && size.stock > 0) {
          size.stock -= Math.min(line.count, size.stock);
          changed = true;
        }
      }
    }
    return { changed, tentative };
  };
  // fitOf keeps solvers: while a reading is typed the kit stays as it is.
  const fitOf = (problem) => {
    const key = JSON.stringify(problem, (_, v) => (typeof v === "bigint" ? v.toString() : v));
    if (!fits.has(key)) {
      let fit;
      try { fit = fettleFit(problem); } catch (e) { if (!e.problem) throw e; fit = e; }
      fits.set(key, fit);
    }
    return fits.get(key);
  };
  const choose = (spec) => {
    const p = spec.picks;
    if (when(spec.when, spec.place) !== true) return {};
    const limit = attempt(p.limit, spec.place).value;
    if (!limit) return {};
    const l = asLimits(limit), unit = (l.low || l.high || {}).unit;
    if (unit === undefined || (l.low && l.high && calc.compare(l.low, l.high) > 0)) return {};
    const from = attempt(p.from, spec.place);
    if (!from.value) return from.problem === "unknown" ? {} : { problem: words[from.problem] };
    const { sizes, decimals } = kit(spec, unit), { changed, tentative } = stocked(spec, sizes, unit);
    const number = (q) => (q ? calc.count(q, unit).num : null);
    const fit = fitOf({ sizes, min: p.pieces[0], max: p.pieces[1], low: number(l.low), high: number(l.high),
      target: number(l.target), buildUp: !!p.buildUp, nearest: !!p.nearest });
    if (fit.problem) return changed ? { problem: say("few", live.parts[p.part].name) } : {};
    const measured = calc.count(from.value, unit);
    const counted = (num) => ({ num, unit, decimals });
    const start = { from: from.value, limits: l, in: (q) => calc.count(q, unit), buildUp: !!p.buildUp };
    try {
      const best = fit.solve(measured.num);
      if (!best) return { ...start, ...noPack(spec, fit, from.value, measured.num, counted) };
      const lines = sizes.map((s, i) => ({ label: s.label, size: s.size || s.label, count: best.counts[i], is: counted(s.nominal) })).filter((x) => x.count);
      lines.sort((a, b) => calc.compare(b.is, a.is));
      return { ...start, pack: { lines, count: best.pieces, total: counted(best.total),
        result: { num: best.result, unit, decimals: Math.max(decimals, measured.decimals) }, tentative } };
    } catch (e) {
      if (e.problem) return { problem: words.hard };
      throw e;
    }
  };
  const noPack = (spec, fit, from, number, counted) => {
    const [thinner, thicker] = fit.neighbours(number);
    const told = (pack) => say(spec.picks.buildUp ? "makes" : "leaves", calc.show(counted(pack.total)), calc.show(counted(pack.result)));
    let why = "";
    if (thinner && thicker) why = say("two", told(thinner), told(thicker));
    else if (thinner) why = say("thickest", told(thinner));
    else if (thicker) why = say("thinnest", told(thicker));
    return { problem: say("no-pack", live.parts[spec.picks.part].name, calc.show(from)) + (why && " " + why), remedy: spec.stop || words.otherwise };
  };

  const result = (key) => {
    if (memo.has(key)) return memo.get(key); // of a circle nothing is known
    const spec = specs.get(key);
    memo.set(key, {});
    let r = {};
    if (spec && spec.reads) r = reading(spec);
    else if (spec && spec.picks) r = choose(spec);
    else if (spec) {
      const { value, problem } = attempt(spec.is, spec.place);
      r = value !== undefined ? { value } : problem === "unknown" ? {} : { problem: words[problem] };
    }
    memo.set(key, r);
    return r;
  };

  const judge = (key) => {
    const spec = specs.get(key), r = result(key);
    if (spec.picks) return { verdict: r.pack ? "inside" : r.problem ? "outside" : undefined, limits: r.limits };
    const accept = spec.accept && attempt(spec.accept, spec.place).value;
    if (!accept) return {};
    const limits = accept.truth === undefined ? asLimits(accept) : undefined;
    if (!r.value) return { limits };
    const good = limits
      ? !(limits.low && calc.compare(r.value, limits.low) < 0) && !(limits.high && calc.compare(r.value, limits.high) > 0)
      : accept.truth;
    return { verdict: good ? "inside" : "outside", limits };
  };

  // What is typed: a number, or a fraction, with or without a unit.
  const fraction = (text) => {
    const m = /^(?:(\d{1,9}) )?(\d{1,9})\/(\d{1,9})$/.exec(text);
    if (!m || m[3] === "0") return undefined;
    const d = BigInt(m[3]);
    return { n: BigInt(m[1] || 0) * d + BigInt(m[2]), d };
  };
  const named = (units) => units.map((u) => live.units[u][1] || live.units[u][0]).join(" or ");
  const parted = (text) => {
    const [, digits, name] = /^([-+−]?[\d.,/ ]*)(.*)$/s.exec(text.trim());
    return [digits.trim().replace("−", "-").replace(/^\+/, ""), name.trim()];
  };
  const amount = (typed) => {
    const num = calc.decimal(typed);
    return num ? { num, decimals: (typed.split(".")[1] || "").length } : { num: fraction(typed), decimals: EXACT };
  };
  // quantity reads a value as a logbook has it: "0.93 mm".
  const quantity = (text) => {
    const [typed, name] = parted(text), { num, decimals } = amount(typed), unit = name ? live.spelled[name] : 0;
    return num && unit !== undefined ? { num, unit, decimals } : undefined;
  };
  const read = (key, text, unit) => {
    const { reads, place } = specs.get(key);
    const [typed, name] = parted(text);
    if (typed.includes(",")) return { refused: say("comma", typed.replace(",", ".")) };
    const { num, decimals } = amount(typed);
    if (!num) return { refused: say("number", text.trim()) };
    const units = reads.units || [];
    if (name) {
      const u = live.spelled[name];
      const fits = u !== undefined && units.length && live.families[reads.family].includes(u);
      if (!fits) return { refused: say("unit", name, named(units)) };
      unit = u;
    }
    if (unit === undefined) unit = units[0] === undefined ? 0 : units[0];
    const got = { num, unit, decimals };
    let beyond;
    for (const tool of (reads.tools || []).map((i) => live.tools[i])) {
      const { low, high } = calc.evaluate(tool.range);
      if (!(low && calc.compare(got, low) < 0) && !(high && calc.compare(got, high) > 0)) { beyond = undefined; break; }
      beyond = say("beyond", calc.show(got), tool.name, calc.show({ low, high }));
    }
    if (beyond) return { refused: beyond };
    const likely = reads.likely && attempt(reads.likely, place).value;
    if (likely) {
      const { low, high } = asLimits(likely);
      if ((low && calc.compare(got, low) < 0) || (high && calc.compare(got, high) > 0)) {
        return { quantity: got, warning: say("unlikely", calc.show(got), calc.show({ low, high })) };
      }
    }
    return { quantity: got };
  };

  return {
    give, result, judge, when, read, quantity, listed, say,
    said: (n) => attempt(live.says[n - 1]).value,
    formula: (key) => { const s = specs.get(key); return calc.formula(s.formula, s.picks ? s.picks.from : s.is, at(s.place)); },
    text: (v, first) => (v.num || v.low !== undefined ? calc.both(v, first) : [calc.show(v)]),
    spec: (key) => specs.get(key), specs, calc,
  };
};
