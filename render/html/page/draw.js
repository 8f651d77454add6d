// fettlePack(r, show) draws what a choice comes to, as SVG: the pieces end to end,
// where they must end, and where they do. Its words say the same. r is a result of the
// engine with from, limits, sizes, counted; lengths go by exact numbers until here.
const fettlePack = (r, show, say) => {
  "use strict";
  const svg = (name, attrs, text) => {
    const el = document.createElementNS("http://www.w3.org/2000/svg", name);
    for (const [key, value] of Object.entries(attrs)) el.setAttribute(key, value);
    if (text) el.textContent = text;
    return el;
  };
  const size = (q) => Number((q.num.n * 1000000n) / q.num.d) / 1e6;
  const { low, high } = r.limits, from = size(r.in(r.from)), unit = r.in;
  const [least, most] = [low ? size(unit(low)) : -Infinity, high ? size(unit(high)) : Infinity];
  const start = r.buildUp ? from : 0;
  const band = r.buildUp ? [least, most] : [from - most, from - least];
  const pieces = r.pack ? r.pack.lines.flatMap((l) => Array(l.count).fill(l)) : [];
  const end = start + pieces.reduce((sum, l) => sum + size(l.is), 0);
  const ends = [0, start, end, ...band.filter(Number.isFinite), r.buildUp ? end : from];
  const [left, right] = [Math.min(...ends), Math.max(...ends)];
  const x = (v) => 8 + (304 * (Math.min(Math.max(v, left), right) - left)) / (right - left || 1);
  const picture = svg("svg", { viewBox: "0 0 320 92", width: "320", height: "92", class: "pack", role: "img" });
  const label = r.pack
    ? say(r.buildUp ? "pack-makes" : "pack-leaves", show(r.from), show(r.pack.total), show(r.pack.result), show(r.limits))
    : say("pack-none", show(r.from), show(r.limits));
  picture.setAttribute("aria-label", label);
  const box = (a, b, y, h, attrs) => picture.append(svg("rect", { x: x(a), y, width: Math.max(x(b) - x(a), 1), height: h, stroke: "currentColor", ...attrs }));
  // Where the pack must end: dashed, so that it differs from a piece without colour.
  box(band[0], band[1], 6, 76, { fill: "none", "stroke-dasharray": "4 3" });
  if (r.buildUp && start !== 0) box(Math.min(0, start), Math.max(0, start), 30, 30, { fill: "none" });
  let at = start;
  for (const piece of pieces) {
    const next = at + size(piece.is);
    box(Math.min(at, next), Math.max(at, next), 30, 30, { class: "piece", "stroke-width": 1.5 });
    if (x(next) - x(at) > 28) {
      picture.append(svg("text", { x: (x(at) + x(next)) / 2, y: 50, "text-anchor": "middle", "font-size": 12, "font-weight": 700, fill: "currentColor" }, show(piece.is).split(" ")[0]));
    }
    at = next;
  }
  if (!r.buildUp) picture.append(svg("path", { d: "M" + x(from) + " 18V72", stroke: "currentColor", "stroke-width": 4 }));
  picture.append(svg("path", { d: "M" + x(end) + " 66l5 10h-10z", fill: "currentColor" })); // where it ends
  return picture;
};
