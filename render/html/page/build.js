// fettleBuild(live, cards, engine) knows one build: the logbook with what stands of
// it, and what may be done next. It is check.go of bench/logbook for the builder's
// hands; what it lets through, record lets through. It knows no document.
//
// A card is {id, key, place, keys, extra}: a printed step. keys are those of its
// values or, for a step that is only done, of the step at each of its places.
const fettleBuild = (live, cards, engine) => {
  "use strict";
  const say = engine.say;
  const byKey = new Map(cards.flatMap((card) => card.keys.map((key) => [key, card])));
  let book, state;

  const split = (key) => {
    const [, step, place] = /^(.*?)(?:\["(.*)"\])?$/s.exec(key);
    return place === undefined ? { step } : { step, place };
  };
  const fact = (key) => state.steps.get(key);
  const stands = (key) => {
    const f = fact(key), spec = engine.spec(key);
    if (!f) return false;
    if (spec && spec.reads) return f.kind === "reading" && engine.judge(key).verdict !== "outside";
    return f.kind === "done" || f.kind === "release";
  };
  const inBuild = (card) => engine.when(card.extra.when, card.place) !== false;
  const done = (card) => card.keys.every(stands);
  const counted = cards.filter((card) => !card.extra.inner);

  // open reads a book again: its readings are what the engine works with.
  const open = (from) => {
    book = from;
    state = fettleLogbook.state(book);
    const readings = {}, pieces = {};
    for (const [key, f] of state.steps) {
      if (f.kind === "reading" && engine.spec(key)) readings[key] = f.values.map(engine.quantity).filter(Boolean);
    }
    for (const [key, f] of state.pieces) {
      const [part, size] = key.split("\n");
      for (const is of f.values.map(engine.quantity)) if (is) (pieces[part] = pieces[part] || []).push({ size, is });
    }
    return { options: { ...live.options, ...(state.start && state.start.options) }, readings, pieces };
  };

  // barrier is the first hold that is not released; nothing after it starts.
  const barrier = () => counted.findIndex((card) => card.extra.signer && inBuild(card) && !done(card));
  const next = () => counted.find((card) => inBuild(card) && !done(card));
  const progress = () => {
    const all = counted.filter(inBuild);
    return { done: all.filter(done).length, all: all.length };
  };

  // left is how many seconds a wait has still to run, and null where it has not begun.
  const left = (card, now) => {
    const { seconds, cures } = card.extra.wait;
    const since = (f) => (f ? Date.parse(f.at) / 1000 : NaN);
    if (cures) {
      const ends = Object.entries(cures).map(([key, s]) => since(stands(key) && fact(key)) + s);
      return ends.some(Number.isNaN) ? null : Math.max(0, Math.ceil(Math.max(...ends) - now / 1000));
    }
    const before = counted[counted.indexOf(card) - 1];
    const from = before && done(before) ? Math.max(...before.keys.map((key) => since(fact(key)))) : NaN;
    return Number.isNaN(from) ? null : Math.max(0, Math.ceil(from + seconds - now / 1000));
  };

  const same = (a, b) => {
    const letters = (s) => [...s].filter((c) => /[\p{L}\p{N}]/u.test(c)).join("").toLowerCase();
    return letters(a) === letters(b);
  };
  // mayDo says in words why a card cannot be done now, undefined where it can.
  const mayDo = (card, by, now) => {
    const stop = counted[barrier()];
    const outer = card.outer || card;
    if (stop && counted.indexOf(outer) > counted.indexOf(stop)) return say("held", stop.number, stop.extra.signer);
    for (const key of card.extra.after || []) {
      const first = byKey.get(key);
      if (first && inBuild(first) && !stands(key)) return say("after", first.number, first.title);
    }
    if (card.extra.wait) {
      const seconds = left(card, now);
      if (seconds === null) return say("unbegun");
      if (seconds > 0) return say("early", clock(seconds));
    }
    if (card.extra.signer) return mayRelease(card, by);
    if (card.extra.works) {
      for (const key of card.keys) {
        const r = engine.result(key);
        if (r.problem) return r.problem + " " + (r.remedy || "");
        if (!r.pack && !r.value) return say("unknown");
        if (engine.judge(key).verdict === "outside") return engine.spec(key).stop || say("do");
      }
    }
    return undefined;
  };
  const mayRelease = (card, by) => {
    const named = card.extra.checks || [];
    for (const key of named) {
      const checked = byKey.get(key);
      if (checked && inBuild(checked) && !stands(key)) return say("unchecked", checked.number, checked.title);
    }
    if (card.extra.signer.toLowerCase() === "builder") return undefined;
    const procedure = card.key.split(".")[0], at = counted.indexOf(card);
    const keys = named.length ? named : counted.slice(0, at).filter((c) => c.key.split(".")[0] === procedure).flatMap((c) => c.keys);
    const own = keys.map(fact).find((f) => f && ["done", "reading"].includes(f.kind) && same(f.by, by));
    return own && say("own-work", by);
  };
  const clock = (seconds) => {
    const h = Math.floor(seconds / 3600), m = Math.floor((seconds % 3600) / 60), s = seconds % 60;
    return h ? h + " h " + m + " min" : m ? m + " min " + s + " s" : s + " s";
  };

  return { open, split, fact, stands, done, inBuild, barrier: () => counted[barrier()], next, progress, left, mayDo, clock, counted, byKey,
    get book() { return book; }, get state() { return state; } };
};
