// fettleLogbook reads and writes the logbook of one build; bench/logbook/FORMAT.md
// is the specification, and a test holds the two together.
//
//   encode(entry)       the line of an entry, without its line end
//   digest(line)        SHA-256 of a line in hexadecimal
//   append(book, entry) adds a line after all that stand, and gives it
//   parse(text)         a book, {lines: [{entry, sum}], fault}, fault in words
//   text(book)          the file
//   state(book)         what stands: {start, revision, steps, pieces, conflicts}
const fettleLogbook = (() => {
  "use strict";
  const KEYS = ["n", "prev", "kind", "at", "by", "serial", "manual", "revision", "digest", "options", "step", "place",
    "part", "size", "values", "tool", "instrument", "role", "line", "text"];
  const utf8 = (text) => new TextEncoder().encode(text);
  const bare = (v) => v === undefined || v === "" || (typeof v === "object" && Object.keys(v).length === 0);
  // Options are sorted by their UTF-8 bytes, which is the order of code points.
  const byPoints = (a, b) => {
    const [x, y] = [[...a], [...b]], i = x.findIndex((c, k) => c !== y[k]);
    return i < 0 ? x.length - y.length : y[i] === undefined ? 1 : x[i].codePointAt(0) - y[i].codePointAt(0);
  };
  const encode = (entry) => {
    const out = {};
    for (const key of KEYS) {
      if (key !== "n" && key !== "prev" && bare(entry[key])) continue;
      out[key] = key === "options"
        ? Object.fromEntries(Object.keys(entry.options).sort(byPoints).map((k) => [k, entry.options[k]]))
        : entry[key];
    }
    return JSON.stringify(out);
  };

  // SHA-256, FIPS 180-4. In plain script: a page opened from disk is not everywhere
  // a secure context, and a line is short.
  const primes = (count) => {
    const found = [];
    for (let n = 2; found.length < count; n++) if (found.every((p) => n % p)) found.push(n);
    return found;
  };
  // The first 32 bits of the fraction of a root, in whole numbers.
  const root = (n, power) => {
    const wanted = BigInt(n) << BigInt(32 * power);
    let low = 0n, high = 1n << 40n;
    while (high - low > 1n) {
      const middle = (low + high) >> 1n;
      if (middle ** BigInt(power) <= wanted) low = middle; else high = middle;
    }
    return Number(low & 0xffffffffn) | 0;
  };
  const K = primes(64).map((p) => root(p, 3)), H = primes(8).map((p) => root(p, 2));
  const digest = (line) => {
    const bytes = utf8(line), length = ((bytes.length + 8) >> 6) * 16 + 16, words = new Int32Array(length);
    bytes.forEach((b, i) => { words[i >> 2] |= b << (24 - (i % 4) * 8); });
    words[bytes.length >> 2] |= 0x80 << (24 - (bytes.length % 4) * 8);
    words[length - 1] = bytes.length * 8;
    words[length - 2] = Math.floor(bytes.length / 0x20000000);
    const turn = (x, n) => (x >>> n) | (x << (32 - n));
    let h = H;
    const w = new Int32Array(64);
    for (let at = 0; at < length; at += 16) {
      for (let i = 0; i < 64; i++) {
        if (i < 16) { w[i] = words[at + i]; continue; }
        const s0 = turn(w[i - 15], 7) ^ turn(w[i - 15], 18) ^ (w[i - 15] >>> 3);
        const s1 = turn(w[i - 2], 17) ^ turn(w[i - 2], 19) ^ (w[i - 2] >>> 10);
        w[i] = (w[i - 16] + s0 + w[i - 7] + s1) | 0;
      }
      let [a, b, c, d, e, f, g, x] = h;
      for (let i = 0; i < 64; i++) {
        const t1 = (x + (turn(e, 6) ^ turn(e, 11) ^ turn(e, 25)) + ((e & f) ^ (~e & g)) + K[i] + w[i]) | 0;
        const t2 = ((turn(a, 2) ^ turn(a, 13) ^ turn(a, 22)) + ((a & b) ^ (a & c) ^ (b & c))) | 0;
        [a, b, c, d, e, f, g, x] = [(t1 + t2) | 0, a, b, c, (d + t1) | 0, e, f, g];
      }
      h = [a, b, c, d, e, f, g, x].map((v, i) => (v + h[i]) | 0);
    }
    return h.map((v) => (v >>> 0).toString(16).padStart(8, "0")).join("");
  };

  const heads = (lines) => {
    const before = new Set(lines.flatMap((l) => l.entry.prev));
    return lines.filter((l) => !before.has(l.sum)).map((l) => l.sum).sort();
  };
  const append = (book, entry) => {
    const prev = heads(book.lines), of = new Map(book.lines.map((l) => [l.sum, l.entry.n]));
    const full = { ...entry, n: 1 + Math.max(0, ...prev.map((p) => of.get(p))), prev };
    const line = { entry: full, sum: digest(encode(full)) };
    book.lines.push(line);
    return line;
  };
  const text = (book) => book.lines.map((l) => encode(l.entry) + "\n").join("");

  const kinds = ["start", "revision", "reading", "done", "refused", "undone", "release", "piece", "correction", "note"];
  // Which kinds must have a field, and which may.
  const work = ["reading", "done", "refused", "undone", "release"];
  const fields = {
    serial: [["start"]], manual: [["start"]], revision: [["start", "revision"]], digest: [["start", "revision"]], options: [[], ["start"]],
    step: [work, ["note"]], place: [[], [...work, "note"]], part: [["piece"]], size: [["piece"]],
    values: [["reading", "piece"], ["correction"]], tool: [[], ["reading", "piece", "correction"]],
    instrument: [[], ["reading", "piece", "correction"]], role: [["release"]], line: [["correction"]],
    text: [["refused", "correction", "note"], ["start", "revision", "reading", "done", "undone", "release", "piece"]],
  };
  const stamp = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d{1,9})?(Z|[+-]\d{2}:\d{2})$/;
  const isDigest = (text) => /^[0-9a-f]{64}$/.test(text);
  const sound = (e) => kinds.includes(e.kind) && e.by && e.by.trim() && stamp.test(e.at) && !Number.isNaN(Date.parse(e.at))
    && Object.entries(fields).every(([name, [must, may]]) =>
      (bare(e[name]) ? !must.includes(e.kind) : must.includes(e.kind) || (may || []).includes(e.kind)))
    && e.prev.every((p, i) => isDigest(p) && (i === 0 || e.prev[i - 1] < p))
    && (bare(e.digest) || isDigest(e.digest)) && (bare(e.line) || isDigest(e.line)) && !(e.values || []).includes("");
  const entryOf = (line) => {
    try {
      const entry = JSON.parse(line);
      return sound(entry) && encode(entry) === line ? entry : undefined;
    } catch { return undefined; }
  };
  const parse = (text) => {
    const raw = text.split("\n"), lines = [], at = new Map();
    const last = raw.pop(); // "" after a line end; else a line that may have been cut off
    if (last && entryOf(last)) raw.push(last);
    const broken = (i, what) => ({ lines: [], fault: [what, i + 1] });
    for (const [i, line] of raw.entries()) {
      const entry = entryOf(line), sum = digest(line);
      if (!entry) return broken(i, "line-unread");
      if (at.has(sum)) return broken(i, "line-twice");
      const n = entry.prev.length ? 1 + Math.max(...entry.prev.map((p) => (at.has(p) ? at.get(p) : -Infinity))) : 1;
      if ((i === 0) !== (entry.kind === "start") || (i === 0) !== (entry.prev.length === 0) || entry.n !== n
        || !entry.prev.every((p) => at.has(p))) return broken(i, "line-loose");
      if (entry.kind === "correction" && !at.has(entry.line)) return broken(i, "line-loose");
      at.set(sum, entry.n);
      lines.push({ entry, sum });
    }
    return lines.length ? { lines } : broken(0, "line-unread");
  };

  // knowing tells whether one line was written with knowledge of another.
  const knowing = (lines) => {
    if (lines.every((l, i) => i === 0 || (l.entry.prev.length === 1 && l.entry.prev[0] === lines[i - 1].sum))) {
      const place = new Map(lines.map((l, i) => [l.sum, i]));
      return (b, a) => place.get(a.sum) < place.get(b.sum);
    }
    const before = new Map();
    for (const l of lines) {
      const all = new Set(l.entry.prev);
      for (const p of l.entry.prev) for (const x of before.get(p)) all.add(x);
      before.set(l.sum, all);
    }
    return (b, a) => before.get(b.sum).has(a.sum);
  };
  const state = (book) => {
    const { lines } = book, knew = knowing(lines), bySum = new Map(lines.map((l) => [l.sum, l]));
    const last = (list) => list.filter((a) => !list.some((b) => b !== a && knew(b, a)));
    const rootOf = (line) => { while (line.entry.kind === "correction") line = bySum.get(line.entry.line); return line; };
    const fixes = new Map(), steps = new Map(), pieces = new Map(), revisions = [], conflicts = [];
    const add = (map, key, line) => { if (map.has(key)) map.get(key).push(line); else map.set(key, [line]); };
    for (const line of lines) {
      const { kind, step, place, part, size } = line.entry;
      if (kind === "correction") add(fixes, rootOf(line).sum, line);
      else if (kind === "start" || kind === "revision") revisions.push(line);
      else if (kind === "piece") add(pieces, part + "\n" + size, line);
      else if (kind !== "note") add(steps, place ? step + '["' + place + '"]' : step, line);
    }
    // standing is the line that stands of several, with its values corrected.
    const standing = (about, list) => {
      const facts = [];
      for (const line of list) {
        const [fix] = last(fixes.get(line.sum) || []).slice(-1);
        if (fix && bare(fix.entry.values)) continue; // it never was
        facts.push({ ...line, values: fix ? fix.entry.values : line.entry.values });
      }
      const end = last(facts), said = new Set(end.map((f) => f.entry.kind + JSON.stringify(f.values)));
      if (said.size > 1) conflicts.push(about);
      return said.size === 1 ? { ...end[end.length - 1].entry, values: end[end.length - 1].values } : undefined;
    };
    const settle = (map) => new Map([...map].map(([key, list]) => [key, standing(key, list)]).filter(([, fact]) => fact));
    const [force] = last(revisions).slice(-1);
    return { start: lines.length ? lines[0].entry : undefined, revision: force && force.entry,
      steps: settle(steps), pieces: settle(pieces), conflicts };
  };
  return { encode, digest, append, parse, text, state };
})();
