// What the server has not heard yet, in plain words; and what it refused meanwhile, as questions. They stay until
// somebody answers them, over any other answer and over a reload.

import { clockTime } from "./clock.js";
import { add, all, note, remove } from "./queue.js";

/** What a script says, in the words of the page. */
export const words = () => document.getElementById("words").dataset;

/** How often something had been erased in the salon when it was last heard of. */
let erased = 0;

function box() {
  const found = document.getElementById("kept");
  if (found) return found;
  const made = document.createElement("div");
  made.id = "kept";
  made.className = "kept";
  document.getElementById("main").before(made);
  return made;
}

const element = (name, className, text) => Object.assign(document.createElement(name), { className, textContent: text });

const said = ({ label, pressed }) => `${label} ${clockTime(pressed)}`;

/** What a press says, whichever id it has. */
export function payload(action, entries) {
  const body = new URLSearchParams(entries);
  body.delete("press");
  return `${action}?${body}`;
}

// What has been pressed and waits says so on its button: nobody should wonder, and press again.
function mark(presses) {
  const waiting = new Map(presses.map((one) => [payload(one.action, one.body), one]));
  for (const form of document.querySelectorAll("form[data-press]")) {
    const one = waiting.get(payload(form.action, new FormData(form)));
    const button = form.querySelector(".submit button") ?? form.querySelector("button");
    if (one) button.dataset.waits = words().pressed.replace("{0}", clockTime(one.pressed));
    else delete button?.dataset.waits;
  }
}

/** Says what waits. */
export async function showWaiting() {
  const presses = await all("presses");
  mark(presses);
  const text = (presses.length === 1 ? words().waits : words().wait).replace("{0}", presses.length);
  const line = element("p", "answer medium waiting", `${text} ${presses.map(said).join(", ")}`);
  line.setAttribute("role", "status");
  const old = document.querySelector("#kept .waiting");
  if (presses.length === 0) old?.remove();
  else if (!old) box().prepend(line);
  else if (old.textContent !== line.textContent) old.replaceWith(line);
}

/** Says less when less waits, but nothing of what has only just been pressed. */
export const showLess = () => document.querySelector("#kept .waiting") && showWaiting();

// The two answers of a refusal are its own; what can't be answered either way is only to be seen.
function drawn({ n, label, pressed, html }) {
  const question = element("section", "answer high question", "");
  question.setAttribute("role", "alert");
  question.dataset.question = n;
  question.kept = html;
  question.innerHTML = html;
  question.prepend(element("h2", "said", said({ label, pressed })));
  if (!question.querySelector(".presses .press")) {
    const seen = element("button", "press", words().seen);
    seen.type = "button";
    question.append(seen);
  }
  // "Not done" leads nowhere: nothing was recorded, and whoever answers stays where they are.
  question.addEventListener("click", (event) => {
    if (!event.target.closest("a, button[type=button]")) return;
    event.preventDefault();
    close(question);
  });
  return question;
}

/** The question that this stands in, if any, has been answered. */
export async function close(inside) {
  const question = inside.closest("[data-question]");
  if (!question) return;
  const { question: n } = question.dataset;
  await remove("questions", /^\d+$/.test(n) ? Number(n) : n);
  question.remove();
  document.dispatchEvent(new Event("questions"));
}

/** Shows all questions that are open, as they are kept, and no others. */
export async function showQuestions() {
  const open = await all("questions");
  const shown = [...document.querySelectorAll("[data-question]")];
  const isOpen = (one) => open.some(({ n, html }) => String(n) === one.dataset.question && html === one.kept);
  for (const one of shown) if (!isOpen(one)) one.remove();
  for (const one of open) if (!document.querySelector(`[data-question="${one.n}"]`)) box().append(drawn(one));
}

/**
 * What was erased in the salon, so many times by now, goes from what this device keeps as well: nobody can tell whom a
 * question of before names, so it says only what was pressed, and when.
 */
export async function dropErased(number) {
  if (!(number > erased)) return;
  erased = number;
  const before = (await all("questions")).filter((one) => number > (one.erasings ?? 0));
  const { outerHTML: html } = element("p", "said", words().erased);
  for (const { n } of before) await note("questions", n, { html, erasings: number });
  await showQuestions();
}

/**
 * Keeps a refusal until it is answered. The same press asks once, however often its answer comes.
 *
 * @param erasings how often something had been erased when it was refused
 */
export async function ask({ id, label, pressed }, html, erasings) {
  const open = await all("questions");
  if (!open.some((question) => question.id === id)) await add("questions", { id, label, pressed, html, erasings });
  await showQuestions();
}
