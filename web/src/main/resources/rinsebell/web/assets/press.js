// Takes each press and tells what came of it. A press is kept before it is sent, with an id of its own, so none is lost
// and each counts once. What was typed stays, and nothing that is urgent is ever disabled.

import { clockTime, now } from "./clock.js";
import { show } from "./feed.js";
import { ask, close, dropErased, payload, showLess, showQuestions, showWaiting, words } from "./kept.js";
import { add, all } from "./queue.js";
import { age, send, sendAtOnce, start as startSending } from "./send.js";
import { isKnown, utmost } from "./sync.js";
import { PAGE } from "./turn.js";

const SHOWN_MS = 60000;
/** Two touches of one knuckle are one press, unless the first has its answer already. */
const KNUCKLE_MS = 700;
const KNUCKLE_PX = 32;
/** An answer that took longer is told of, but moves nobody to another page. */
const LATE_MS = 10000;
/** Burning stands in no line. */
const URGENT = /\/discomfort$/;
/** "Heard" that comes too late, for a bell that is over, needs nobody's answer. */
const HEARD = /\/bells\/acknowledge(\?|$)/;

const NOWHERE = { x: NaN, y: NaN };
/** Where the page was touched last; nowhere for the keyboard. */
let touch = NOWHERE;
/** What was pressed last, when and where, and whether anything has been answered since. */
let before = { ...NOWHERE, at: NaN, payload: "", answered: true };
let tabs;

/** 128 random bits. `crypto.randomUUID` is missing over plain HTTP on a LAN. */
export const freshId = () => Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, "0")).join("");

function tell(text, urgency) {
  const answer = document.getElementById("answer");
  answer.className = `answer ${urgency}`;
  answer.setAttribute("role", urgency === "calm" ? "status" : "alert");
  const said = document.createElement("p");
  said.className = "said";
  said.textContent = text;
  answer.replaceChildren(said);
}

// A whole page in place of an answer says in its own words what went wrong.
function problem(html) {
  const page = new DOMParser().parseFromString(html, "text/html").querySelector("main");
  return [...(page?.querySelectorAll("h1, p") ?? [])].map((part) => part.textContent.trim()).join(". ") || words().failed;
}

const isPage = (html) => /^\s*<!doctype/i.test(html);

function place(element) {
  const old = document.getElementById(element.id);
  if (!old) return;
  if (element.dataset.n) show(element.id, element.dataset.n, element.outerHTML);
  else old.replaceWith(element);
}

// What was recorded stays long enough for an undo; a refusal stays until it is answered.
function fade() {
  const shown = document.querySelector("#answer.calm > *");
  if (shown) setTimeout(() => shown.isConnected && document.getElementById("answer").replaceChildren(), SHOWN_MS);
}

// An answer is a list of elements, each of which takes the place of the one with its id.
function take(html) {
  const box = document.createElement("template");
  box.innerHTML = html;
  const fresh = [...box.content.children];
  fresh.forEach(place);
  fade();
  const wrong = document.querySelector("form .problems a");
  if (wrong && fresh.some((element) => element.tagName === "FORM")) wrong.focus();
}

// What is kept of a refusal: what it says and how it can be answered, not the form that it belongs to.
function refusal(html) {
  if (isPage(html)) return Object.assign(document.createElement("p"), { textContent: problem(html) }).outerHTML;
  const box = document.createElement("template");
  box.innerHTML = html;
  return (box.content.querySelector("#answer") ?? box.content.firstElementChild)?.innerHTML ?? words().failed;
}

function saved({ label, pressed }, unsure) {
  const told = document.querySelector("#answer.calm .said[data-late]")?.dataset.late;
  const one = `${label} ${clockTime(pressed)}`;
  const all = [...(told ? [told] : []), unsure ? `${one} (${words().unsure})` : one].join(", ");
  tell(`${all}: ${words().saved}`, "calm");
  document.querySelector("#answer .said").dataset.late = all;
  fade();
}

function told({ next, html }) {
  if (next) location.assign(next);
  else if (isPage(html)) tell(problem(html), "high");
  else take(html);
}

// Nobody is taken to another page for what was pressed on a page before this one, or long ago; and what was refused
// that nobody stands before any more stays as a question.
async function answered(one, answer) {
  before.answered = true;
  const own = one.page === PAGE;
  const late = !own || age(one) > LATE_MS;
  if (late && !answer.ok && !HEARD.test(one.action)) await ask(one, refusal(answer.html), answer.erasings);
  tabs?.postMessage({ one, ok: answer.ok, unsure: answer.unsure });
  return () => {
    if (own && !(late && (answer.next || !answer.ok))) told(answer);
    else if (answer.ok) saved(one, answer.unsure);
  };
}

// Another tab has sent something, or somebody has answered a question there.
function hear({ data: { one, ok, unsure } }) {
  if (ok && one.page === PAGE) saved(one, unsure);
  showQuestions();
  showLess();
}

// The same press again; or another one at the same spot, where the answer to the first has put it. Burning always counts.
function isSameKnuckle(form, said, at) {
  if (!(at - before.at < KNUCKLE_MS)) return false;
  if (said === before.payload) return !before.answered;
  return Math.hypot(touch.x - before.x, touch.y - before.y) < KNUCKLE_PX && !URGENT.test(form.action);
}

/** What was typed and sent once is not sent again before it has its answer: a form does not go away by itself. */
const isWaiting = async (said) => (await all("presses")).some((one) => payload(one.action, one.body) === said);

/** Whoever is named at this device now; nobody by and by, since the browser forgets. */
const who = () => document.cookie.match(/(?:^|; )(?:__Host-)?who=(\d+)/)?.[1];

async function press(form, submitter) {
  const body = new URLSearchParams(new FormData(form, submitter));
  body.delete("press");
  const said = payload(form.action, body);
  const at = performance.now();
  if (isSameKnuckle(form, said, at)) return;
  if (form.dataset.press === "page" && (await isWaiting(said))) return;
  before = { ...touch, at, payload: said, answered: false };
  const id = freshId();
  body.set("press", id);
  const label = (submitter?.querySelector("strong") ?? submitter)?.textContent.trim() ?? "";
  const time = { pressed: Math.round(now()), sure: isKnown(), at, utmost: utmost(), date: Date.now() };
  const one = { id, action: form.action, body: body.toString(), label, page: PAGE, again: false, who: who(), ...time };
  const n = await add("presses", one);
  await close(form);
  if (URGENT.test(form.action)) await sendAtOnce({ ...one, n });
  send();
}

/** Takes over every form that records something; without this script the browser sends it plainly. */
export function start() {
  fade();
  showQuestions();
  tabs = typeof BroadcastChannel === "undefined" ? undefined : new BroadcastChannel("rinsebell");
  tabs?.addEventListener("message", hear);
  document.addEventListener("erased", ({ detail }) => dropErased(detail));
  document.addEventListener("questions", () => tabs?.postMessage({}));
  startSending({ answered, waits: showWaiting, gone: showLess });
  document.addEventListener("submit", (event) => {
    const form = event.target;
    // What opens a page records nothing.
    if (!form.matches("form[data-press]") || event.submitter?.formMethod === "get") return;
    event.preventDefault();
    press(form, event.submitter);
  });
  // Whoever does not do what was refused goes on with what is typed.
  document.addEventListener("click", (event) => {
    if (!event.target.closest?.("#answer:not(.calm) a.press[href='/']") || !document.querySelector("main form[data-press=page]")) return;
    event.preventDefault();
    document.getElementById("answer").replaceChildren();
  });
  addEventListener("pointerdown", ({ clientX: x, clientY: y }) => (touch = { x, y }), true);
  document.addEventListener("keydown", (event) => {
    touch = NOWHERE;
    if (event.key === "Escape") document.getElementById("answer")?.replaceChildren();
  });
}
