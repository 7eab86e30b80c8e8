// Sends a press once, however often it must be sent: each carries an id of its own, and the server answers the same
// id the same. What has no answer yet is kept, also over a reload, and sent again until there is one. What was typed
// stays, and nothing that is urgent is ever disabled.

import { clockTime, now } from "./clock.js";
import { show } from "./feed.js";

const KEPT = "rinsebell-presses";
const LONGEST_WAIT_MS = 4000;
const SHOWN_MS = 60000;
// The server itself answers within 20 s.
const NO_ANSWER_MS = 25000;
const SLOW_MS = 3000;
const pending = new Map();

/** 128 random bits. `crypto.randomUUID` is missing over plain HTTP on a LAN. */
export const freshId = () => Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, "0")).join("");

// Until the time is over, or the line to the server is back.
const pause = (ms) =>
  new Promise((done) => {
    document.addEventListener("connected", done, { once: true });
    setTimeout(done, ms);
  });

function tell(text, urgency) {
  const answer = document.getElementById("answer");
  answer.className = `answer ${urgency}`;
  answer.setAttribute("role", urgency === "calm" ? "status" : "alert");
  const said = document.createElement("p");
  said.className = "said";
  said.textContent = text;
  answer.replaceChildren(said);
}

const words = () => document.getElementById("words").dataset;

function keep() {
  try {
    sessionStorage.setItem(KEPT, JSON.stringify([...pending.values()]));
  } catch {
    // A browser that keeps nothing still sends while the page is open.
  }
}

function kept() {
  try {
    return JSON.parse(sessionStorage.getItem(KEPT)) ?? [];
  } catch {
    return [];
  }
}

function waiting({ label, pressed }) {
  const more = pending.size > 1 ? words().more.replace("{0}", pending.size - 1) : "";
  tell(`${label} ${clockTime(pressed)}: ${words().retry} ${more}`.trim(), "medium");
}

// A line that swallows everything gives no error either: the press is told of as waiting, and in the end given up.
async function fetchOnce(one) {
  const given = new AbortController();
  const slow = setTimeout(() => waiting(one), SLOW_MS);
  const over = setTimeout(() => given.abort(), NO_ANSWER_MS);
  const headers = { Accept: "text/html", "Rinsebell-Part": "answer" };
  if (one.again) headers["Rinsebell-Again"] = "true";
  try {
    return await fetch(one.action, { method: "POST", body: new URLSearchParams(one.body), headers, signal: given.signal });
  } finally {
    clearTimeout(slow);
    clearTimeout(over);
  }
}

// 502 and 504 come from something between here and the server, so they say as little as no answer does; and the server
// itself asks to be asked again while it does not know.
async function send(one) {
  for (let wait = 500; ; wait = Math.min(wait * 2, LONGEST_WAIT_MS)) {
    try {
      const response = await fetchOnce(one);
      if (![502, 504].includes(response.status) && !response.headers.has("Retry-After")) return response;
    } catch {
      // No answer says nothing about whether it arrived: the same id is sent again.
    }
    one.again = true;
    keep();
    waiting(one);
    await pause(wait);
  }
}

function place(element) {
  const old = document.getElementById(element.id);
  if (!old) return;
  if (element.dataset.n) show(element.id, element.dataset.n, element.outerHTML);
  else old.replaceWith(element);
}

// A whole page in place of an answer says in its own words what went wrong.
function problem(html) {
  const page = new DOMParser().parseFromString(html, "text/html").querySelector("main");
  const text = [...(page?.querySelectorAll("h1, p") ?? [])].map((part) => part.textContent.trim()).join(". ");
  tell(text || words().failed, "high");
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

// Nobody is taken to another page for what was pressed on a page before this one.
function answered(response, html, { label, pressed, resumed }) {
  if (resumed && response.ok) tell(`${label} ${clockTime(pressed)}: ${words().saved}`, "calm");
  else if (response.redirected || response.headers.has("Rinsebell-Next")) {
    location.assign(response.headers.get("Rinsebell-Next") ?? response.url);
  } else if (/^\s*<!doctype/i.test(html)) problem(html);
  else take(html);
}

async function deliver(payload, one) {
  pending.set(payload, one);
  keep();
  const response = await send(one);
  const html = await response.text().catch(() => "");
  pending.delete(payload);
  keep();
  answered(response, html, one);
}

function press(form, submitter) {
  const body = new URLSearchParams(new FormData(form, submitter));
  body.delete("press");
  const payload = `${form.action}?${body}`;
  if (pending.has(payload)) return;
  const pressed = Math.round(now());
  body.set("press", freshId());
  body.set("pressed", String(pressed));
  const label = (submitter?.querySelector("strong") ?? submitter)?.textContent.trim() ?? "";
  deliver(payload, { action: form.action, body: body.toString(), label, pressed, again: false });
}

// What a page before this one could not get rid of: nobody knows whether it arrived.
function resume() {
  for (const one of kept()) deliver(one.body, { ...one, again: true, resumed: true });
}

/** Takes over every form that records something; without this script the browser sends it plainly. */
export function start() {
  fade();
  resume();
  document.addEventListener("submit", (event) => {
    const form = event.target;
    if (!form.matches("form[data-press]")) return;
    event.preventDefault();
    press(form, event.submitter);
  });
  document.addEventListener("keydown", (event) => {
    if (event.key === "Escape") document.getElementById("answer")?.replaceChildren();
  });
}
