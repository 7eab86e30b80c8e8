// Decides what rings on this device: from the plan of every bell that the page carries and the salon's time, and from
// nothing else. So it rings on time whether the server is there or not.

import { forget, isAnswered, moved, note, recall } from "./answered.js";
import { left, now } from "./clock.js";
import { chosen } from "./device.js";
import { words } from "./kept.js";
import { sound, speak } from "./sound.js";

const ORDER = ["calm", "asked", "low", "medium", "high"];
const SHOWN = 3;
const LOOK_MS = 250;

const rank = (urgency) => ORDER.indexOf(urgency);

function turn(text, words) {
  const [from, urgency, how, word, ears] = text.split(":");
  return { from: Number(from), urgency, how, what: words[Number(word)], ears: ears ? ears.split(",") : [] };
}

function bell(element) {
  const { bell: id, round, where, counts, href, harm, spoken, hear, words, turns } = element.dataset;
  return { id, round, where, counts: Number(counts), href, harm: Number(harm), spoken, hear, turns: turns.split(" ").map((text) => turn(text, words.split("|"))) };
}

/** Every bell of the floor with all that it will do. */
export const bells = () => [...document.querySelectorAll("#bells .rung li")].map(bell);

// What a bell does at an instant; nothing before its first turn.
const turnAt = (one, at) => one.turns.filter((each) => each.from <= at).pop();

// Whether an ear hears that turn.
const hears = (ear, { how, ears }) => how === "rings" && (ears.includes("all") || ears.includes(ear) || (ear === "all" && ears.length > 0));

// Each bell with the turn that it is in, which is a quiet one where this device has answered it itself: in the order of the
// server, the most urgent first, of those what does harm, then what rings, then what began first.
function turned(all, at) {
  const quiet = (one, turn) => (isAnswered(one, turn, all, at) ? { ...turn, how: "heard" } : turn);
  const rings = ({ turn }) => (turn.how === "rings" ? 0 : 1);
  return all
    .map(moved)
    .map((one) => ({ one, turn: turnAt(one, at) }))
    .filter(({ turn }) => turn)
    .map(({ one, turn }) => ({ ...one, turn: quiet(one, turn) }))
    .sort((a, b) => rank(b.turn.urgency) - rank(a.turn.urgency) || a.harm - b.harm || rings(a) - rings(b) || a.turn.from - b.turn.from);
}

/** What rings for an ear at an instant, the loudest first, of equals the longest. */
export const ringing = (all, ear, at) => turned(all, at).filter(({ turn }) => hears(ear, turn));

let parsed = { element: null, all: [] };

// The plan changes only with its fragment.
function plan() {
  const element = document.getElementById("bells");
  if (element === parsed.element) return parsed.all;
  // A plan that the server has just sent knows what it was told before; one that came with the page may not.
  if (parsed.element && !document.documentElement.hasAttribute("data-alone")) forget();
  parsed = { element, all: element ? bells() : [] };
  return parsed.all;
}

/** The ear of this device: chosen by hand, or that of the page it last showed. */
export const ear = () => chosen().ear || document.documentElement.dataset.ear || chosen().last || "all";

function heard(one) {
  const form = Object.assign(document.createElement("form"), { method: "post", action: one.hear });
  form.dataset.press = "";
  form.append(Object.assign(document.createElement("button"), { textContent: words().heard }));
  return form;
}

// Without the server the strip is drawn from the plan, in the same shape.
function item(one) {
  const li = document.createElement("li");
  li.className = `bell ${one.turn.urgency}`;
  const link = Object.assign(document.createElement("a"), { href: one.href });
  const marks = Object.assign(document.createElement("span"), { className: "marks", textContent: "!".repeat(rank(one.turn.urgency) - 1) });
  const where = Object.assign(document.createElement("strong"), { textContent: one.where });
  const what = Object.assign(document.createElement("span"), { className: "what", textContent: one.turn.what });
  const time = Object.assign(document.createElement("time"), { textContent: left(one.counts, now()) });
  time.dataset.due = one.counts;
  link.append(marks, where, " ", what, " ", time);
  li.append(link);
  if (one.hear && one.turn.how === "rings") li.append(heard(one));
  return li;
}

function pieces({ href }) {
  const number = href.match(/^\/visits\/(\d+)$/)?.[1];
  const panel = number && document.getElementById(`visit-${number}`);
  const links = [...document.querySelectorAll(`main a[href="${CSS.escape(href)}"]`)].map((link) => link.closest("[data-n], li"));
  return [panel, ...links].filter(Boolean);
}

// Each head in the colour of the most urgent that it asks.
function colour(asking) {
  const coloured = new Set();
  for (const one of asking) {
    for (const piece of pieces(one)) {
      if (coloured.has(piece)) continue;
      coloured.add(piece);
      piece.classList.remove(...ORDER);
      piece.classList.add(one.turn.urgency);
    }
  }
}

function drawAlone(at) {
  const asking = turned(plan(), at).filter(({ turn }) => rank(turn.urgency) >= rank("low"));
  const drawn = asking.map((one) => `${one.id} ${one.turn.urgency} ${one.turn.how} ${one.turn.what}`).join(",");
  const strip = document.querySelector("#bells > ol:not(.rung)");
  if (!strip || strip.dataset.drawn === drawn) return;
  strip.dataset.drawn = drawn;
  strip.replaceChildren(...asking.slice(0, SHOWN).map(item));
  colour(asking);
}

function look() {
  const at = now();
  const mine = ringing(plan(), ear(), at);
  const loudest = mine[0]?.turn.urgency ?? "calm";
  if (document.documentElement.dataset.ring !== loudest) document.documentElement.dataset.ring = loudest;
  sound(loudest, mine.map((one) => `${one.id}@${one.turn.from}`));
  if (chosen().spoken) speak(mine.map((one) => ({ key: `${one.id}@${one.turn.from}`, text: one.spoken })));
  if (document.documentElement.hasAttribute("data-alone")) drawAlone(at);
}

/** Rings from now on. */
export function start() {
  document.addEventListener("refused", forget);
  recall();
  document.addEventListener("submit", (event) => note(event.target, event.submitter), true);
  setInterval(look, LOOK_MS);
  look();
}
