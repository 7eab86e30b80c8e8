// Keeps the page live: takes fragments from the server, drops older ones, says when nothing comes, and opens again.

import { clockTime, now, tick } from "./clock.js";
import { events } from "./events.js";
import { isOurs } from "./ours.js";
import { panAll } from "./ribbon.js";
import { hear } from "./sync.js";

// The server beats every 5 s: two beats may get lost, and before 15 s are over the screen says so and rings by itself.
const STALE_MS = 12000;
// A browser that has no connection left lets a stream wait without a word.
const OPEN_MS = 5000;
const RELOAD_AFTER_MS = 5000;
const board = document.documentElement.dataset.board;
const link = document.getElementById("link");

let source;
let opening;
let reopening;
let process = "";
// A page that the browser had kept has heard nothing since it was drawn.
const kept = document.documentElement.dataset.kept !== undefined;
let heard = kept ? -Infinity : performance.now();
let heardAt = kept ? Number(document.documentElement.dataset.now) : now();
let away = kept ? "kept" : "stale";
let opened = performance.now();
let held = null;
const waiting = new Map();

const parts = (stamp) => {
  const cut = stamp.lastIndexOf("-");
  return { process: stamp.slice(0, cut), n: Number(stamp.slice(cut + 1)) };
};

// Numbers count within one run of the server. While a stream of the newer run is open, the older run's are out.
function older(stamp, shown) {
  const [is, was] = [parts(stamp), parts(shown)];
  return is.process === was.process ? is.n < was.n : process !== "" && is.process !== process;
}

// Where the keyboard was, in terms that also hold in the new fragment.
function focusPath(element) {
  if (element.id) return `#${CSS.escape(element.id)}`;
  const key = element.getAttribute("href") ?? element.form?.getAttribute("action");
  const name = element.tagName.toLowerCase();
  if (!key) return null;
  return name === "a" ? `a[href="${CSS.escape(key)}"]` : `form[action="${CSS.escape(key)}"] ${name}`;
}

function swap(old, fresh) {
  const path = old.contains(document.activeElement) ? focusPath(document.activeElement) : null;
  const open = [...old.querySelectorAll("details[open]")].map((details) => details.className);
  old.replaceWith(fresh);
  for (const name of open) for (const details of fresh.querySelectorAll("details")) if (details.className === name) details.open = true;
  if (path) (fresh.matches(path) ? fresh : fresh.querySelector(path))?.focus({ preventScroll: true });
  tick(fresh);
  panAll(fresh);
  document.dispatchEvent(new CustomEvent("fragment", { detail: fresh }));
}

/** Shows a fragment unless the page already shows a newer one, or a finger rests on it: then when it lifts. */
export function show(id, stamp, html) {
  const old = document.getElementById(id);
  if (!old) return reload();
  if (old.dataset.n && older(stamp, old.dataset.n)) return;
  if (held && old.contains(held)) {
    const last = waiting.get(id);
    if (!last || !older(stamp, last.stamp)) waiting.set(id, { stamp, html });
    return;
  }
  const box = document.createElement("template");
  box.innerHTML = html.trim();
  swap(old, box.content.firstElementChild);
}

// The board has other pieces than this page. Never in a loop, and never away under a finger.
function reload() {
  if (held) return setTimeout(reload, 500);
  if (performance.now() > RELOAD_AFTER_MS) location.reload();
  else setTimeout(reload, RELOAD_AFTER_MS);
}

function release() {
  held = null;
  const late = [...waiting];
  waiting.clear();
  for (const [id, { stamp, html }] of late) show(id, stamp, html);
}

function say(state) {
  const stale = state === away;
  const text = link.dataset[state].replace("{0}", clockTime(heardAt));
  if (link.textContent !== text) link.textContent = text;
  link.classList.toggle("stale", stale);
  document.documentElement.toggleAttribute("data-alone", stale);
}

function listen() {
  heard = performance.now();
  heardAt = now();
  away = "stale";
  say(source.readyState === EventSource.OPEN ? "live" : "asked");
}

function takeBeat(data) {
  const beat = JSON.parse(data);
  hear(beat.now, beat.speed);
  document.dispatchEvent(new CustomEvent("erased", { detail: beat.erased }));
  listen();
  const doubt = document.getElementById("doubt");
  doubt.textContent = doubt.dataset[beat.clock] ?? "";
  doubt.hidden = !doubt.textContent;
  panAll();
}

function takeFragment(data, stamp) {
  const fragment = JSON.parse(data);
  process = parts(stamp).process;
  listen();
  if (document.getElementById(fragment.id)?.dataset.n !== stamp) show(fragment.id, stamp, fragment.html);
}

const taken = { beat: takeBeat, redraw: reload, fragment: takeFragment };
const address = (path) => `${path}?board=${encodeURIComponent(board)}`;
const connected = () => document.dispatchEvent(new Event("connected"));

function open() {
  clearTimeout(reopening);
  reopening = undefined;
  opened = performance.now();
  source?.close();
  source = new EventSource(address("/feed"));
  for (const [type, take] of Object.entries(taken)) source.addEventListener(type, (event) => take(event.data, event.lastEventId));
  source.onopen = connected;
  source.onerror = lost;
  clearTimeout(opening);
  opening = setTimeout(() => source.readyState === EventSource.CONNECTING && lost(), OPEN_MS);
}

// A browser keeps few connections, so a fifth stream is refused: that page asks again and again for how a stream begins.
function lost() {
  askOnce();
  reopen();
}

async function askOnce() {
  try {
    const answer = await fetch(address("/feed/once"));
    // Who was thrown out shows nothing any more.
    if (isOurs(answer) && answer.headers.get("Rinsebell-Refused") === "stranger") return location.replace("/join");
    if (!answer.ok || !isOurs(answer)) return;
    connected();
    for (const { type, data, lastEventId } of events(await answer.text())) taken[type]?.(data, lastEventId);
  } catch {
    // Whoever hears nothing says so soon.
  }
}

// The browser's own retry never follows a refusal, and a woken tablet may hold a dead stream that looks open.
function reopen() {
  source?.close();
  reopening ??= setTimeout(open, 1000 + Math.random() * 2000);
}

function watch() {
  if (performance.now() - heard < STALE_MS) return;
  say(away);
  // A stream that is only being opened gets its time too: a slow network is not a dead one.
  if (performance.now() - opened > STALE_MS) reopen();
}

function wake() {
  if (document.visibilityState === "visible" && performance.now() - Math.max(heard, opened) > STALE_MS / 2) open();
}

// Nothing was heard while the device slept, and a stream from before may be dead without a word.
function woke({ detail: slept }) {
  heard -= slept;
  open();
}

/** Starts the feed of this page's board; a page without one stands still. */
export function start() {
  if (!board) return;
  open();
  watch();
  setInterval(watch, 1000);
  addEventListener("pageshow", (event) => event.persisted && open());
  addEventListener("pagehide", () => source?.close());
  document.addEventListener("visibilitychange", wake);
  document.addEventListener("woke", woke);
  addEventListener("online", open);
  document.addEventListener("pointerdown", (event) => (held = event.target), true);
  for (const up of ["pointerup", "pointercancel"]) document.addEventListener(up, () => setTimeout(release), true);
}
