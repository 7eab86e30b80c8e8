// Keeps the page of a link that looks in fresh: asks for the page itself again and again, and takes what it says. Once the
// server does not answer, the page says so, and of when it is.

import { isOurs } from "./ours.js";

const EVERY_MS = 15000;
const PATIENCE_MS = 5000;
/** A page that has not heard for longer, because the phone slept, does not look current until it has. */
const STALE_MS = 30000;

let asking = false;
let asked;
let heard = times();

/** A sleep shows in the first, a hand that sets the clock back does not hide time in the second. */
function times() {
  return [Date.now(), performance.now()];
}

const silence = () => Math.max(...times().map((now, i) => now - heard[i]));

function say(lost) {
  document.documentElement.classList.toggle("is-lost", lost);
  const said = document.querySelector(".lost");
  if (said) said.hidden = !lost;
}

function take(html, isClosed) {
  const page = new DOMParser().parseFromString(html, "text/html");
  const [old, fresh] = [document, page].map((one) => one.querySelector("main"));
  document.title = page.title;
  if (old.outerHTML !== fresh.outerHTML) old.replaceWith(fresh);
  // What was taken back never opens again.
  if (isClosed) clearInterval(asked);
}

async function ask() {
  if (asking) return;
  asking = true;
  const given = new AbortController();
  const over = setTimeout(() => given.abort(), PATIENCE_MS);
  try {
    const answer = await fetch(location.href, { cache: "no-store", signal: given.signal });
    const html = await answer.text();
    const isClosed = answer.status === 404;
    if (!isOurs(answer) || !(answer.ok || isClosed)) throw new Error("nobody says when chairs are free");
    heard = times();
    say(false);
    take(html, isClosed);
  } catch {
    say(true);
  } finally {
    clearTimeout(over);
    asking = false;
  }
}

function wake() {
  if (document.visibilityState !== "visible") return;
  if (silence() > STALE_MS) say(true);
  ask();
}

asked = setInterval(ask, EVERY_MS);
document.addEventListener("visibilitychange", wake);
addEventListener("pageshow", (event) => event.persisted && wake());
addEventListener("online", ask);
addEventListener("offline", () => say(true));
