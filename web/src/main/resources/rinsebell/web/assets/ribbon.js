// Pans the ribbons: one element per ribbon has a width of a hundred seconds, so moving it moves everything on it.

import { now } from "./clock.js";

const NOW_AT = 0.37;
const SECONDS_PER_PX = 7.2;
const SHORTEST = 2700;
const LONGEST = 10800;
const AHEAD = 300;
const EDGE_PX = 14;

const pct = (fraction) => `${(fraction * 100).toFixed(4)}%`;

function reach(svg, at) {
  if (svg.dataset.from !== undefined) {
    const from = Number(svg.dataset.from);
    return { from, span: Math.max(Number(svg.dataset.until), at + AHEAD) - from };
  }
  const span = Math.min(LONGEST, Math.max(SHORTEST, svg.clientWidth * SECONDS_PER_PX));
  return { from: at - span * NOW_AT, span };
}

function place(element, from, span, width) {
  element.setAttribute("x", pct(-from / span / width));
  element.setAttribute("width", pct(100 / span / width));
}

// Words whose place is beyond an edge stay readable at the edge; words after a bar go when they don't fit there.
function lay(note, from, span, width) {
  const at = Number(note.dataset.note);
  const long = ((note.getComputedTextLength() + EDGE_PX) / width) * span;
  if (note.classList.contains("after")) {
    note.setAttribute("visibility", at + long > from + span ? "hidden" : "visible");
    return;
  }
  const before = note.classList.contains("before") ? long : note.classList.contains("middle") ? long / 2 : 0;
  note.setAttribute("x", `${Math.max(from + before, Math.min(at, from + span - long + before))}%`);
}

// A clock time that an edge would cut is not shown.
function trim(mark, from, span, width) {
  const middle = ((parseFloat(mark.getAttribute("x")) - from) / span) * width;
  const half = mark.getComputedTextLength() / 2;
  mark.setAttribute("visibility", middle < half || middle > width - half ? "hidden" : "visible");
}

function pan(svg) {
  const at = (now() - Number(svg.dataset.epoch)) / 1000;
  const { from, span } = reach(svg, at);
  const past = Math.min(1, Math.max(0.0001, (at - from) / span));
  for (const ruler of svg.querySelectorAll("[data-ruler]")) place(ruler, from, span, 1);
  for (const clip of svg.querySelectorAll("[data-past]")) clip.setAttribute("width", pct(past));
  for (const ruler of svg.querySelectorAll("[data-past-ruler]")) place(ruler, from, span, past);
  for (const line of svg.querySelectorAll("[data-now-line]")) {
    line.setAttribute("x1", pct(past));
    line.setAttribute("x2", pct(past));
  }
  for (const mark of svg.querySelectorAll(".tick + text")) trim(mark, from, span, svg.clientWidth);
  for (const note of svg.querySelectorAll("[data-note]")) lay(note, from, span, svg.clientWidth);
}

/** Brings every ribbon under `scope`, and `scope` where it is one, up to this instant. */
export function panAll(scope = document) {
  if (scope !== document && scope.matches("svg[data-epoch]")) pan(scope);
  for (const svg of scope.querySelectorAll("svg[data-epoch]")) pan(svg);
}
