// Asks the server what time it is: when a page opens, when a tablet wakes, every minute, and when a beat of the feed
// contradicts what the screen shows.

import { doubt, guess, now, pace, set, take } from "./clock.js";
import { erasings, isOurs } from "./ours.js";

const KEPT = "rinsebell-clock";
const EVERY_MS = 60000;
const LOOK_MS = 250;
const PATIENCE_MS = 3000;
/** For so long an answer is waited for after a wake, before the device's own time of day is taken: a bell may be due. */
const WAKE_PATIENCE_MS = 600;
const QUICK = 4;
/** A larger step of one of the device's two clocks against the other is sleep, or somebody's hand. */
const JUMP_MS = 500;
/** A beat may lie on its way this long before it is wondered at. */
const LATE_BEAT_MS = 800;

let measuring;
/** Whether the last question for the time got no answer. */
let owed = false;
/** Steps of one of the device's clocks so far. */
let looks = 0;
/** Sleep, in our milliseconds, that no answer has told of since. */
let slept = 0;
/** Steps forwards so far, in our milliseconds: sleep, or somebody's hand. */
let forwards = 0;

// performance.now() stands still while a device sleeps, and Date.now() jumps when it is set: either shows here.
const gap = () => Date.now() - performance.now();
let gapSeen = gap();

/**
 * A count of milliseconds that goes on at least as far as true time does: the steady clock, with each step forwards of the
 * device's time of day taken for sleep. A step back undoes none, for nobody can sleep backwards.
 */
export const utmost = () => performance.now() + forwards + Math.max(0, gap() - gapSeen);

/** Whether `now` tells what the server said, rather than a guess, or what was right before a sleep. */
export const isKnown = () => doubt() < Infinity && slept === 0 && Math.abs(gap() - gapSeen) < JUMP_MS;

async function ask(dropped) {
  const given = new AbortController();
  const over = setTimeout(() => given.abort(), PATIENCE_MS);
  dropped.addEventListener("abort", () => given.abort());
  const before = gap();
  const asked = performance.now();
  try {
    const response = await fetch("/clock", { cache: "no-store", signal: given.signal });
    const answered = performance.now();
    if (!response.ok || !isOurs(response)) return false;
    const erased = erasings(response);
    if (erased < Infinity) document.dispatchEvent(new CustomEvent("erased", { detail: erased }));
    const told = await response.json();
    // Nobody knows how long an answer took over which the device slept, whether its steady clock stood still meanwhile
    // or went on.
    if (dropped.aborted || answered - asked > PATIENCE_MS || Math.abs(gap() - before) > JUMP_MS) return false;
    take(asked, told.now, answered, told.speed);
    slept = 0;
    return true;
  } catch {
    return false;
  } finally {
    clearTimeout(over);
  }
}

async function askSeveral(dropped) {
  let heard = false;
  for (let i = 0; i < QUICK && !dropped.aborted; i++) {
    if (await ask(dropped)) heard = true;
    else if (i > 0) break;
  }
  if (dropped.aborted) return measure();
  owed = !heard;
  if (heard) keep();
  return heard;
}

/**
 * Asks a few times in a row; of all answers the one that took least time counts. Tells whether there was one. What was
 * asked before a sleep is asked anew.
 */
export function measure() {
  if (measuring) return measuring.told;
  const mine = new AbortController();
  const told = askSeveral(mine.signal).finally(() => measuring?.mine === mine && (measuring = undefined));
  measuring = { mine, told };
  return told;
}

function drop() {
  measuring?.mine.abort();
  measuring = undefined;
}

/** Asks as `measure` does; what is under way may be lost, or from before the server's clock was put right, and is given up. */
export function measureAnew() {
  drop();
  return measure();
}

/** The server has been heard: what it was asked in vain, or is being asked, it may say now. */
export const measureIfOwed = () => (owed || measuring) && measureAnew();

// For a page that opens without the server: a guess, which the device's own time of day is good enough for.
function keep() {
  try {
    localStorage.setItem(KEPT, JSON.stringify({ server: Math.round(now()), date: Date.now(), speed: pace() }));
  } catch {
    // A browser that keeps nothing has no guess.
  }
}

/** Takes the last known time, carried on by the device's own clock; any word of the server is better. */
export function recall() {
  try {
    const { server, date, speed } = JSON.parse(localStorage.getItem(KEPT));
    guess(server + (Date.now() - date) * speed, speed);
  } catch {
    // The page's own instant stands.
  }
}

/**
 * A beat comes later than it was sent, nobody knows by how much: it tells only that it is not earlier than that. What
 * contradicts the screen, or finds it guessing, is looked into, and believed only when nothing better is to be had.
 */
export async function hear(server, speed) {
  const heard = performance.now();
  const since = looks;
  const said = () => server + (performance.now() - heard) * speed;
  const ahead = () => now() - said();
  if (speed === pace() && doubt() < Infinity && ahead() >= -doubt() && ahead() <= doubt() + LATE_BEAT_MS * speed) return;
  if ((await measureAnew()) || since !== looks) return;
  if (speed !== pace() || ahead() < -doubt() || doubt() === Infinity) {
    set(said(), speed);
    slept = 0;
  }
}

const rest = (ms) => new Promise((done) => setTimeout(done, ms));

// Only the server can tell sleep from a hand that set the clock. While it does not answer, a step forwards counts as
// sleep: a bowl on a head did not sleep, and a bell too early is better than one too late. What it says later counts.
async function look() {
  const jump = gap() - gapSeen;
  if (Math.abs(jump) < JUMP_MS) return;
  const mine = ++looks;
  gapSeen += jump;
  slept += Math.max(0, jump);
  forwards += Math.max(0, jump);
  if (jump > 0) document.dispatchEvent(new CustomEvent("woke", { detail: jump }));
  await Promise.race([measureAnew(), rest(WAKE_PATIENCE_MS)]);
  if (mine !== looks || slept === 0) return;
  guess(now() + slept * pace(), pace());
  slept = 0;
}

function wake() {
  look();
  measure();
}

/** Keeps this screen's time true from now on. */
export function start() {
  if (document.documentElement.dataset.kept) recall();
  measure();
  setInterval(measure, EVERY_MS);
  setInterval(look, LOOK_MS);
  addEventListener("pageshow", (event) => event.persisted && wake());
  document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && wake());
  document.addEventListener("connected", measureAnew);
}
