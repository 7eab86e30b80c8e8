// Sends a press once, however often it must be sent: each carries an id of its own, and the server answers the same
// id the same. What was typed stays, and nothing that is urgent is ever disabled.

import { now } from "./clock.js";
import { show } from "./feed.js";

const GIVE_UP_MS = 120000;
const SHOWN_MS = 60000;
const pending = new Map();

/** 128 random bits. `crypto.randomUUID` is missing over plain HTTP on a LAN. */
export const freshId = () => Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, "0")).join("");

const pause = (ms) => new Promise((done) => setTimeout(done, ms));

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

async function send(action, body) {
  const headers = { Accept: "text/html", "Rinsebell-Part": "answer" };
  const until = performance.now() + GIVE_UP_MS;
  for (let wait = 500; ; wait = Math.min(wait * 2, 4000)) {
    try {
      const response = await fetch(action, { method: "POST", body, headers });
      if (![502, 504].includes(response.status)) return response;
    } catch {
      // No answer says nothing about whether it arrived: the same id is sent again.
    }
    if (performance.now() > until) return null;
    tell(words().retry, "medium");
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

async function press(form, submitter) {
  const body = new URLSearchParams(new FormData(form, submitter));
  body.delete("press");
  const payload = `${form.action}?${body}`;
  if (pending.has(payload)) return;
  pending.set(payload, true);
  body.set("press", freshId());
  body.set("pressed", String(Math.round(now())));
  try {
    const response = await send(form.action, body);
    if (!response) return tell(words().failed, "high");
    if (response.redirected || response.headers.has("Rinsebell-Next")) {
      location.assign(response.headers.get("Rinsebell-Next") ?? response.url);
      return;
    }
    const html = await response.text();
    if (/^\s*<!doctype/i.test(html)) problem(html);
    else take(html);
  } finally {
    pending.delete(payload);
  }
}

/** Takes over every form that records something; without this script the browser sends it plainly. */
export function start() {
  fade();
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
