// The builder's page. The logbook is the state: every tick and reading is a line of
// it, and all that is shown follows from its lines and from what stands in boxes that
// are not recorded yet. Findings that a choice rests on stand beside it, by the names
// of style.css.
(() => {
  "use strict";
  const live = JSON.parse(document.getElementById("data").textContent), words = live.words;
  const engine = fettleEngine(live, words), say = engine.say;
  const { manual, revision, digest } = document.body.dataset;
  const store = fettleStore(manual + " " + (digest || revision));
  const all = (query, from = document) => [...from.querySelectorAll(query)];
  const make = (name, attrs = {}, ...inside) => {
    const el = document.createElement(name);
    for (const [key, value] of Object.entries(attrs)) {
      if (key in el && key !== "role") el[key] = value; else el.setAttribute(key, value);
    }
    el.append(...inside);
    return el;
  };

  // What was printed once for several places stands at each of them here.
  for (const as of all(".as")) {
    const twin = document.getElementById(as.dataset.as);
    as.replaceWith(...all(":scope > .say > *", twin).filter((el) => !el.matches("h3,h4,h5,h6,.flags,.message")).map((el) => el.cloneNode(true)));
  }

  // Cards, in the order of the work.
  const keyed = (key, place) => (place === undefined ? key : key + '["' + place + '"]');
  let outer;
  const cards = all("article").map((el) => {
    const [key, at] = el.id.split("--"), extra = { ...live.cards[el.id] }, place = at === undefined ? undefined : live.places[at];
    const read = all(":scope > .side > .read", el).concat(all(":scope > .wide > .pick", el));
    extra[live.kinds[key.split(".")[1]]] = true; // reads, works or judges
    extra.inner = !!el.closest(".otherwise");
    let keys = extra.visits ? extra.visits.map((p) => keyed(key, p)) : [keyed(key, place)];
    if (extra.reads) keys = [...new Set(read.flatMap((r) => keysOf(r)))];
    const heading = el.querySelector("h3,h4,h5,h6");
    const card = { el, id: el.id, key, place, extra, keys, number: el.querySelector(".rail b").textContent,
      title: heading.textContent.trim(), heading, tick: el.querySelector(".rail input[type=checkbox]"),
      initials: el.querySelector(".rail input:not([type])") };
    if (extra.inner) card.outer = outer; else outer = card;
    card.release = extra.signer && all("[data-release]", el)[0];
    if (card.release) card.release.addEventListener("keydown", (e) => { if (e.key === "Enter") card.tick.focus(); });
    heading.tabIndex = -1;
    return card;
  });
  function keysOf(read) {
    const own = all("[data-key]", read).map((box) => box.dataset.key);
    return own.length ? own : [read.dataset.key];
  }
  const cardOf = new Map(cards.map((card) => [card.el, card]));
  const build = fettleBuild(live, cards, engine);

  // Readings: the boxes of one key, and the line beside them that speaks.
  const groups = new Map();
  for (const read of all(".read[data-unit]")) {
    const boxes = all(".box:not(.result) input", read), note = make("p", { className: "note", id: "note-" + groups.size });
    read.append(note);
    for (const key of keysOf(read)) {
      const own = boxes.filter((box) => (box.dataset.key || read.dataset.key) === key);
      groups.set(key, { key, read, note, boxes: own, result: read.querySelector(".result input"), units: all(".unit", read) });
      for (const box of own) {
        box.setAttribute("aria-describedby", note.id);
        box.addEventListener("input", () => typed(key));
        box.autocomplete = "off";
        // Enter goes on to the next box and then to the tick: a hand is on the tool.
        box.addEventListener("keydown", (e) => {
          if (e.key !== "Enter") return;
          const after = boxes[boxes.indexOf(box) + 1];
          (after || cardOf.get(box.closest("article")).tick).focus();
        });
      }
    }
  }
  const drafts = new Map(); // by key: what stands in the boxes, [[text, unit], …]
  const prefs = { first: live.first, one: false, now: undefined };
  const unitOf = (key) => {
    const units = engine.spec(key).reads.units || [];
    return units.find((u) => live.units[u][4] === prefs.first) || units[0];
  };
  const unitName = (u) => (u === undefined ? "" : live.units[u][1] || live.units[u][0]);

  // known is what the engine goes by: the record, and above it what is being typed.
  let recorded = {};
  const known = () => {
    const readings = { ...recorded.readings };
    for (const [key, list] of drafts) {
      const read = list.filter(([text]) => text.trim()).map(([text, unit]) => engine.read(key, text, unit).quantity);
      if (read.length && read.every(Boolean)) readings[key] = read; else delete readings[key];
    }
    return { ...recorded, readings };
  };
  const typed = (key) => {
    const { boxes } = groups.get(key);
    const old = drafts.get(key) || [];
    drafts.set(key, boxes.map((box, i) => [box.value, box.value && old[i] && old[i][0] ? old[i][1] : unitOf(key)]));
    const card = build.byKey.get(key);
    if (card) card.tick.checked = false;
    engine.give(known());
    showValues();
    keep();
  };

  // Values, everywhere they stand.
  const set = (el, text) => { if (el && el.textContent !== text) el.textContent = text; };
  const fill = (box, text) => { if (box && box.value !== text) box.value = text; };
  const shown = (v) => {
    const [first, other] = engine.text(v, prefs.first);
    return other ? first + " (" + other + ")" : first;
  };
  const says = all("[data-say]"), judged = all(".read[data-key]"), picks = all(".pick[data-key]");
  const showValues = () => {
    for (const el of says) {
      const v = engine.said(Number(el.dataset.say));
      if (el.classList.contains("set")) {
        const [first, other] = v ? engine.text(v, prefs.first) : [words.blank, ""];
        set(el.querySelector(".big"), first);
        set(el.querySelector(".other"), other || "");
      } else {
        set(el, v ? shown(v) : words.blank);
        el.classList.toggle("blank", !v);
      }
    }
    for (const read of judged) for (const key of keysOf(read)) showJudged(read, key);
    for (const pick of picks) showPick(pick, pick.dataset.key);
    for (const box of back) {
      const key = box.dataset.key, { value, pack } = engine.specs.has(key) ? engine.result(key) : {};
      fill(box, value ? counted(key, value) : pack ? engine.calc.show(pack.total) : "");
    }
  };
  const back = all("#record-h ~ * [data-key]");
  const counted = (key, q) => {
    const { reads } = engine.spec(key), unit = reads && (reads.units || [])[0];
    const v = unit === undefined || !live.families[reads.family].includes(q.unit) ? q : engine.calc.count(q, unit);
    return numberOf(v);
  };
  const numberOf = (q) => engine.calc.show(q).replace(/[^\d]+$/, "");
  const showJudged = (read, key) => {
    const r = engine.result(key), { verdict, limits } = engine.judge(key), group = groups.get(key);
    if (limits) set(read.querySelector(".limit"), shown(limits));
    const messages = [];
    if (group) {
      let bad = false;
      group.boxes.forEach((box, i) => {
        const draft = (drafts.get(key) || [])[i], unit = draft && draft[0] ? draft[1] : unitOf(key);
        set(box.parentElement.querySelector(".unit"), unitName(unit));
        const got = draft && draft[0].trim() ? engine.read(key, draft[0], draft[1]) : {};
        if (got.refused || got.warning) messages.push(got.refused || got.warning);
        box.setAttribute("aria-invalid", got.refused ? "true" : "false");
        bad = bad || got.refused;
      });
      if (group.result) {
        fill(group.result, r.value ? numberOf(r.value) : "");
        set(group.result.parentElement.querySelector(".unit"), unitName(r.value ? r.value.unit : unitOf(key)));
      }
    } else {
      fill(read.querySelector(".result input"), r.value ? shown(r.value) : "");
      set(read.querySelector(".formula"), engine.formula(key));
    }
    if (r.problem) messages.push(r.problem);
    if (verdict === "inside") messages.push(words.inside);
    if (verdict === "outside") messages.push(limits ? say("outside", shown(limits)) : words.refused, engine.spec(key).stop || words.do);
    const note = group ? group.note : noteIn(read);
    const text = messages.join(" ");
    if (!group || keysOf(read).length === 1 || messages.length) set(note, text);
    note.classList.toggle("stop", verdict === "outside" || messages.length > 1);
    for (const o of all(".otherwise", read.closest("article"))) o.classList.toggle("due", verdict === "outside");
  };
  const noteIn = (el) => el.querySelector(":scope > .note") || el.appendChild(make("p", { className: "note" }));
  const showPick = (el, key) => {
    const r = engine.result(key), sizes = live.parts[engine.spec(key).picks.part].sizes;
    set(el.querySelector("dd"), engine.formula(key));
    all("tbody td input", el).slice(0, sizes.length).forEach((box, i) => {
      const n = r.pack ? r.pack.lines.filter((l) => l.size === sizes[i].label).reduce((sum, l) => sum + l.count, 0) : "";
      fill(box, String(n));
    });
    const [total, result] = all("tfoot input", el);
    fill(total, r.pack ? numberOf(r.pack.total) : "");
    fill(result, r.pack ? numberOf(r.pack.result) : "");
    const note = noteIn(el);
    if (!note.nextElementSibling) el.querySelector(".tables").before(note); // the answer stands above the table
    set(note, r.problem ? "✗ " + r.problem + " " + (r.remedy || "") : r.pack ? "✓ " + engine.listed(r.pack) + (r.pack.tentative ? ". " + words.tentative : "") : "");
    note.classList.toggle("stop", !!r.problem);
    const old = el.querySelector("svg.pack"), picture = r.limits && fettlePack(r, (v) => engine.text(v, prefs.first)[0], say);
    if (old) old.remove();
    if (picture) note.before(picture);
  };

  // The record.
  const field = (id) => document.getElementById(id);
  const now = () => {
    const d = new Date(), pad = (n) => String(Math.abs(n)).padStart(2, "0"), zone = -d.getTimezoneOffset();
    const local = new Date(d.getTime() + zone * 60000).toISOString().slice(0, 19);
    return local + (zone ? (zone < 0 ? "-" : "+") + pad(Math.trunc(zone / 60)) + ":" + pad(zone % 60) : "Z");
  };
  const started = () => {
    if (build.book.lines.length) return undefined;
    if (!digest) return words["no-digest"];
    const serial = field("serial").value.trim(), by = field("builder").value.trim();
    if (!serial || !by) return words.who;
    fettleLogbook.append(build.book, { kind: "start", at: now(), by, serial, manual, revision, digest, options: live.options });
    return undefined;
  };
  const entriesOf = (card, by) => {
    const at = now();
    if (card.extra.signer) return card.keys.map((key) => ({ kind: "release", at, by, ...build.split(key), role: card.extra.signer }));
    if (!card.extra.reads) return card.keys.map((key) => ({ kind: "done", at, by, ...build.split(key) }));
    const entries = [];
    for (const key of card.keys) {
      const list = drafts.get(key);
      if (!list && build.fact(key)) continue; // as it stands
      const read = (list || []).map(([text, unit]) => engine.read(key, text, unit));
      if (!read.length || read.some((r) => !r.quantity)) return (read.find((r) => r.refused && drafts.get(key).some(([t]) => t.trim())) || {}).refused || words.fill;
      entries.push({ kind: "reading", at, by, ...build.split(key), values: read.map((r) => engine.calc.show(r.quantity)) });
    }
    return entries;
  };
  const answer = (card, text) => {
    const el = card.el.querySelector(":scope > .rail > .answer") || card.el.querySelector(".rail").appendChild(make("p", { className: "answer", role: "alert" }));
    set(el, text || "");
  };
  const ticked = (card) => {
    if (!card.tick.checked) return undo(card);
    const by = card.release ? card.release.value.trim() : (card.initials && card.initials.value.trim()) || field("builder").value.trim();
    let why = started();
    if (!why && card.release && !by) why = words.signs;
    if (!why) why = build.mayDo(card, by || field("builder").value.trim(), Date.now());
    const entries = why ? [] : entriesOf(card, by);
    if (typeof entries === "string") why = entries;
    if (why) {
      card.tick.checked = false;
      answer(card, why);
      if (why === words.who) (field("serial").value.trim() ? field("builder") : field("serial")).focus();
      return undefined;
    }
    answer(card, "");
    for (const entry of entries) fettleLogbook.append(build.book, entry);
    for (const key of card.keys) drafts.delete(key);
    prefs.now = card.id;
    refresh();
    return tell(say("recorded", card.number + " " + card.title));
  };
  const undo = (card) => {
    const at = now(), by = (card.initials && card.initials.value.trim()) || field("builder").value.trim();
    for (const key of card.keys) {
      const f = build.fact(key);
      if (!f || f.kind === "undone" || f.kind === "refused") continue;
      if (f.kind === "reading") { // what was read stays in the boxes, to be read again
        const group = groups.get(key);
        drafts.set(key, group.boxes.map((_, i) => [f.values[i] || "", undefined]));
      }
      fettleLogbook.append(build.book, { kind: "undone", at, by, ...build.split(key) });
    }
    refresh();
    tell(say("taken", card.number + " " + card.title));
  };
  const refused = (card, text) => {
    const by = (card.initials && card.initials.value.trim()) || field("builder").value.trim();
    const why = started() || (!text && words["why-not"]) || build.mayDo(card, by, Date.now());
    answer(card, why);
    if (why) return;
    const at = now();
    for (const key of card.keys) fettleLogbook.append(build.book, { kind: "refused", at, by, ...build.split(key), text });
    refresh();
  };
  for (const card of cards) {
    card.tick.addEventListener("change", () => ticked(card));
    if (!card.extra.judges) continue;
    const why = make("input", {}), button = make("button", { type: "button" }, words.record);
    button.addEventListener("click", () => refused(card, why.value.trim()));
    card.el.querySelector(".say").append(make("details", { className: "refuse" }, make("summary", {}, words.refuse), make("label", {}, words.because, why), button));
  }

  // Formulas on demand: a builder who needs a number needs it alone (C4).
  for (const el of all(".read .formula, .set > .formula")) {
    const holder = el.parentElement.classList.contains("set") ? el : el.parentElement;
    const details = make("details", { className: "how" }, make("summary", {}, words.formula));
    holder.replaceWith(details);
    details.append(el);
  }
  for (const box of all(".result input, .pick input, #record-h ~ * td input[data-key]")) box.readOnly = true;

  // The bar: how far, what next, and the way there, under the thumb (C1: the place in
  // the list is what an interrupted person loses first).
  const button = (text, act, attrs = {}) => {
    const b = make("button", { type: "button", ...attrs }, text);
    b.addEventListener("click", act);
    return b;
  };
  const meter = make("progress", { "aria-label": words.menu }), count = make("span", { className: "count" });
  const goal = button("", () => go(build.next())), status = make("p", { role: "status", className: "told" });
  const toggle = button("", () => { prefs.one = !prefs.one; show(current()); keep(); });
  const panel = make("div", { className: "panel", id: "panel", hidden: true });
  const menu = button(words.menu, () => {
    panel.hidden = !panel.hidden;
    menu.setAttribute("aria-expanded", String(!panel.hidden));
    if (!panel.hidden) panel.querySelector("button").focus();
  }, { "aria-controls": "panel", "aria-expanded": "false" });
  const bar = make("aside", { className: "bar", "aria-label": words.menu }, panel, status,
    make("div", { className: "count-row" }, meter, count, goal),
    make("div", { className: "keys" }, button("‹ " + words.back, () => step(-1)), toggle, menu, button(words.forward + " ›", () => step(1))));
  const tell = (text) => set(status, text);

  const file = make("input", { type: "file", accept: ".log,.jsonl,.txt", className: "file", "aria-label": words.load });
  file.addEventListener("change", async () => {
    const text = file.files.length ? await file.files[0].text() : "";
    file.value = "";
    load(text);
  });
  const load = (text) => {
    const book = fettleLogbook.parse(text);
    if (book.fault) return tell(say(...book.fault));
    const s = fettleLogbook.state(book);
    if (s.start.manual !== manual) return tell(say("other-manual", s.start.manual));
    if (!s.revision || s.revision.digest !== digest) return tell(say("other-digest", s.revision ? s.revision.revision : "?"));
    drafts.clear();
    build.open(book);
    fill(field("serial"), s.start.serial);
    fill(field("builder"), s.start.by);
    refresh();
    tell(say("loaded", book.lines.length));
    return go(build.next(), true);
  };
  const save = () => {
    const why = started();
    if (why) return tell(why);
    const address = URL.createObjectURL(new Blob([fettleLogbook.text(build.book)], { type: "application/x-ndjson" }));
    const name = (manual + "_" + build.state.start.serial).replace(/[^\p{L}\p{N}_-]/gu, "_") + ".log";
    make("a", { href: address, download: name }).click();
    setTimeout(() => URL.revokeObjectURL(address), 60000);
    refresh();
    return tell(say("saved", build.book.lines.length));
  };
  let sure = false;
  const other = button(words.other, () => {
    if (!sure && build.book.lines.length) { sure = true; return tell(words.sure); }
    sure = false;
    drafts.clear();
    build.open({ lines: [] });
    for (const box of all("main input, .title input")) { box.checked = false; box.value = ""; }
    refresh();
    return go(build.next());
  });
  const system = (s) => button(words[s === 1 ? "metric" : "inch"], () => { prefs.first = s; showUnits(); showValues(); keep(); });
  const systems = [1, 2].map(system);
  const showUnits = () => systems.forEach((b, i) => b.setAttribute("aria-pressed", String(prefs.first === i + 1)));
  panel.append(button(words.save, save), button(words.load, () => file.click()), file,
    make("div", { role: "group", "aria-label": words.units }, make("span", {}, words.units), ...systems), other,
    button(words.close, () => menu.click()));
  const kept = make("p", { className: "quiet" });
  panel.append(kept);

  // One step, or the whole list.
  const visible = () => build.counted.filter(build.inBuild);
  const current = () => cards.find((card) => card.id === prefs.now && build.inBuild(card)) || build.next() || build.counted[0];
  const show = (card) => {
    document.body.classList.toggle("one", prefs.one);
    set(toggle, prefs.one ? words.whole : words.one);
    for (const el of all(".now")) el.classList.remove("now");
    if (!card) return;
    card.el.classList.add("now");
    card.el.closest("section").classList.add("now");
  };
  const go = (card, quiet) => {
    if (!card) return;
    prefs.now = card.id;
    show(card);
    card.el.scrollIntoView({ block: "start" });
    if (!quiet) card.heading.focus({ preventScroll: true });
    keep();
  };
  const step = (by) => {
    const list = visible(), at = list.indexOf(current().outer || current());
    go(list[Math.min(Math.max(at + by, 0), list.length - 1)]);
  };

  // What stands, everywhere it shows.
  const refresh = () => {
    recorded = build.open(build.book);
    engine.give(known());
    const stop = build.barrier(), at = stop ? build.counted.indexOf(stop) : Infinity;
    let i = -1;
    for (const card of cards) {
      if (!card.extra.inner) i++;
      const done = build.done(card), gated = i > at, off = !build.inBuild(card);
      if (card.tick.checked !== done) card.tick.checked = done;
      if (card.off !== off) card.el.hidden = card.off = off;
      if (card.gated !== gated) {
        card.gated = gated;
        card.el.classList.toggle("gated", gated);
        for (const box of all("input,button", card.el)) box.disabled = gated;
      }
      card.el.classList.toggle("done", done);
      showRecorded(card);
    }
    for (const el of all(".gate")) el.remove();
    const first = build.counted[at + 1];
    if (first) first.el.querySelector(".say").prepend(make("p", { className: "gate" }, say("held", stop.number, stop.extra.signer)));
    showValues();
    showBar();
    tickClocks();
    keep();
  };
  const showRecorded = (card) => {
    for (const key of card.extra.reads ? card.keys : []) {
      const f = build.fact(key), group = groups.get(key);
      if (!group || drafts.has(key)) continue;
      group.boxes.forEach((box, k) => {
        const text = f && f.kind === "reading" ? f.values[k] || "" : "";
        fill(box, text.replace(/[^\d/]+$/, "") + (text && endsIn(text, key)));
      });
    }
    const f = card.keys.map(build.fact).find(Boolean);
    const who = f && f.kind !== "undone" ? f.by : undefined;
    if (card.release && who) fill(card.release, who);
    if (f && f.kind === "refused") answer(card, words.refused + " " + f.text);
  };
  // endsIn leaves the unit out where it is the one printed beside the box.
  const endsIn = (text, key) => {
    const q = engine.quantity(text);
    return q && q.unit === unitOf(key) ? "" : " " + text.replace(/^[-\d./ ]+/, "");
  };
  const showBar = () => {
    const { done, all: of } = build.progress(), next = build.next();
    meter.max = of;
    meter.value = done;
    set(count, say("progress", done, of));
    set(goal, next ? say("next", next.number, next.title) : words.finished);
    goal.disabled = !next;
    if (build.state.conflicts.length) tell(say("settle", build.state.conflicts.join(", ")));
    show(current());
  };
  const waits = cards.filter((card) => card.extra.wait);
  const tickClocks = () => {
    for (const card of waits) {
      const el = card.el.querySelector(".clock") || card.el.querySelector(".say").appendChild(make("p", { className: "clock", role: "timer" }));
      const seconds = build.done(card) ? 0 : build.left(card, Date.now());
      set(el, build.done(card) || card.off ? "" : seconds === null ? words["time-wait"] : seconds ? say("time-left", build.clock(seconds)) : words["time-up"]);
    }
  };
  setInterval(tickClocks, 1000);

  // Kept on the device.
  let keeping = true, written;
  const keep = () => {
    if (!keeping) return;
    const text = fettleLogbook.text(build.book);
    const told = (saved) => saved.then(() => set(kept, words.kept), () => set(kept, words.unkept));
    if (text !== written) {
      const lines = build.book.lines.length;
      told(store.save("book", text).then(() => { document.body.dataset.kept = lines; }));
      written = text;
    }
    const fields = loose.map((box) => (box.type === "checkbox" ? box.checked : box.value));
    told(store.save("drafts", { drafts: [...drafts], prefs: { ...prefs }, fields }));
  };
  // What is neither tick nor reading: initials, dates, what lies ready. It has its place
  // in the page, which does not change while the digest does not.
  const ours = new Set([...cards.map((card) => card.tick), ...[...groups.values()].flatMap((g) => g.boxes)]);
  const loose = all("input").filter((box) => !ours.has(box) && !box.readOnly);
  for (const box of loose) box.addEventListener("input", () => keep());

  const begin = ([text, was]) => {
    document.body.append(bar);
    document.body.classList.add("live");
    build.open({ lines: [] });
    const book = text ? fettleLogbook.parse(text) : { lines: [] };
    if (!book.fault) build.open(book);
    if (was) {
      for (const [key, list] of was.drafts) {
        if (!groups.has(key)) continue;
        drafts.set(key, list);
        groups.get(key).boxes.forEach((box, i) => fill(box, (list[i] || [""])[0]));
      }
      Object.assign(prefs, was.prefs);
      loose.forEach((box, i) => {
        if (box.type === "checkbox") box.checked = !!was.fields[i]; else fill(box, was.fields[i] || "");
      });
    }
    showUnits();
    refresh();
    if (build.done(current())) prefs.now = undefined; // where the work goes on, not where it was left
    if (build.book.lines.length) go(current(), true);
    document.body.dataset.ready = "";
    performance.mark("ready");
  };
  Promise.all([store.load("book"), store.load("drafts")]).then(begin, () => {
    keeping = false;
    set(kept, words.unkept);
    begin([]);
  });
})();
