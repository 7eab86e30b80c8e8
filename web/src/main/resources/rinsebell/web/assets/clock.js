// The salon's time on this screen: the server's, carried on by a clock that no hand can set. What the device itself
// takes for the time of day has no part in it.

import { bound, isSlewed, remembered, roundTrip, slewed, surest } from "./offset.js";

let speed = 1;
let trips = [];
let sure = false;
let correction = { by: 0, since: 0 };

/** Our own clock: from no special instant, in salon milliseconds, of which `speed` pass in one of ours. */
const own = (ms = performance.now()) => ms * speed;

const estimate = () => own() + surest(trips, own()).offset;

/** Milliseconds since 1970 by the server's clock. */
export const now = () => estimate() + slewed(correction.by, own() - correction.since);

/** How far `now` can be wrong, in milliseconds; without bound while it is only a guess. */
export const doubt = () => (sure ? bound(surest(trips, own()), own()) : Infinity);

/** How many salon seconds pass in one of ours: 1, but for a demo. */
export const pace = () => speed;

/** From now on it is this time. */
export function set(server, itsSpeed = speed) {
  speed = itsSpeed;
  trips = [roundTrip(own(), server, server, own())];
  correction = { by: 0, since: own() };
  sure = true;
}

/** Takes a guess that any word of the server is better than. */
export function guess(server, itsSpeed) {
  set(server, itsSpeed);
  sure = false;
}

/** Takes what the server said: asked and answered by `performance.now()`. Noise never moves a clock back. */
export function take(asked, server, answered, itsSpeed) {
  const shown = sure && itsSpeed === speed ? now() : NaN;
  if (Number.isNaN(shown)) trips = [];
  speed = itsSpeed;
  const fresh = roundTrip(own(asked), server, server, own(answered));
  trips = remembered(trips, fresh);
  const by = shown - estimate();
  correction = { by: trips.length > 1 && isSlewed(by) ? by : 0, since: own() };
  sure = true;
}

const two = (n) => String(n).padStart(2, "0");
const count = (s) => (s < 6000 ? `${two(Math.floor(s / 60))}:${two(s % 60)}` : `${Math.floor(s / 3600)}h${two(Math.floor(s / 60) % 60)}`);

/** The time left, or past with a plus, in the same words as the server writes it. */
export const left = (due, at) => (due > at ? count(Math.ceil((due - at) / 1000)) : `+${count(Math.floor((at - due) / 1000))}`);

/** Clock time in the salon's zone. */
export function clockTime(at) {
  const face = document.querySelector("[data-clock]");
  const twelve = face?.dataset.clock === "12";
  const text = new Intl.DateTimeFormat("en-GB", {
    hour: twelve ? "numeric" : "2-digit", minute: "2-digit", hourCycle: twelve ? "h12" : "h23", timeZone: face?.dataset.zone,
  }).format(at);
  return text;
}

function worded(time, due, at) {
  const text = left(due, at);
  return time.dataset.in && due > at ? time.dataset.in.replace("{0}", text) : text;
}

function write(element, text) {
  if (element.textContent !== text) element.textContent = text;
}

/** Brings every count and clock face under `scope` up to this instant. */
export function tick(scope = document) {
  const at = now();
  for (const time of scope.querySelectorAll("[data-due]")) write(time, worded(time, Number(time.dataset.due), at));
  for (const face of scope.querySelectorAll("[data-clock]")) write(face, clockTime(at));
}

// The page itself is the server's first word: it was drawn between being asked for and beginning to come. Modules that
// import this one may ask at once, so it is taken here.
const root = document.documentElement;
const load = performance.getEntriesByType?.("navigation")[0];
// One that the browser had kept was drawn a while ago: how long, only the device's own time of day can tell.
const kept = Number(root.dataset.kept);
if (kept) guess(Number(root.dataset.now) + (Date.now() - kept) * speed, speed);
else take(load?.requestStart ?? 0, Number(root.dataset.now), load?.responseStart || performance.now(), speed);
