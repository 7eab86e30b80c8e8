// Notes which turns of bells this device has sounded, when, and since when it could know of them; and tells the server now
// and then, for the lead's page. Nothing waits for it, and what can't be told for long is forgotten.

import { now, pace } from "./clock.js";
import { isOurs } from "./ours.js";
import { ear } from "./ring.js";

const KEPT = "rinsebell-sounded";
const MOST = 200;
const BATCH = 50;
const TELL_MS = 10000;

const noted = new Set();
// By the steady clock, so that it needs no mending when the salon's time is measured better.
let awake = performance.now();

function read() {
  try {
    return JSON.parse(localStorage.getItem(KEPT)) ?? [];
  } catch {
    return [];
  }
}

function keep(lines) {
  try {
    localStorage.setItem(KEPT, JSON.stringify(lines.slice(-MOST)));
  } catch {
    // A browser that keeps nothing tells nothing.
  }
}

/** Each key is a bell's id, an at sign, and the instant from which its turn is. */
function note(keys) {
  const at = now();
  const since = at - (performance.now() - awake) * pace();
  const fresh = keys.filter((key) => !noted.has(key));
  for (const key of fresh) noted.add(key);
  if (fresh.length) keep([...read(), ...fresh.map((key) => `${key.replace("@", " ")} ${ear()} ${Math.round(at)} ${Math.round(since)}`)]);
}

async function tell() {
  const lines = read().slice(0, BATCH);
  if (!lines.length) return;
  const body = new URLSearchParams(lines.map((line) => ["sounded", line]));
  const answer = await fetch("/sounded", { method: "POST", body }).catch(() => null);
  // What it can't read it will not read later either.
  if (answer && isOurs(answer) && (answer.ok || answer.status === 400)) keep(read().filter((line) => !lines.includes(line)));
}

/** Notes and tells from now on. */
export function start() {
  document.addEventListener("sounded", ({ detail }) => note(detail));
  document.addEventListener("woke", () => (awake = performance.now()));
  document.addEventListener("connected", tell);
  setInterval(tell, TELL_MS);
}
