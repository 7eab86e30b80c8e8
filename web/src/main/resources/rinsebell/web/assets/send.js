// Sends what waits, one press after another in the order pressed, each as often as it takes: the server answers the
// same id the same, so it counts once.

import { now, pace } from "./clock.js";
import { erasings, isOurs } from "./ours.js";
import { all, note, remove } from "./queue.js";
import { isKnown, measureAnew, measureIfOwed, utmost } from "./sync.js";
import { BUSY, inTurn, PAGE } from "./turn.js";

const FIRST_WAIT_MS = 500;
const LONGEST_WAIT_MS = 4000;
// The server itself answers within 20 s.
const NO_ANSWER_MS = 25000;
const SLOW_MS = 3000;
/** RFC 9110, 15.5.9. */
const TOO_SLOW = 408;
/** What is sent later than this was not pressed now. */
const AT_ONCE_MS = 1000;
/** A larger step of one clock against the device's steady one is sleep, or somebody's hand. */
const SLEEP_MS = 2000;

/** What there is to show when nothing waits. */
const NONE = Symbol("none");

let sending = false;
let more = false;
let hooks = {};

// Until the time is over, or the line to the server is back, as far as the page or the browser knows.
const pause = (ms) =>
  new Promise((done) => {
    const over = new AbortController();
    const end = () => (over.abort(), done());
    document.addEventListener("connected", end, { signal: over.signal });
    addEventListener("online", end, { signal: over.signal });
    setTimeout(end, ms);
  });

// By the salon's clock; less than nothing where that was not known then or is not known now.
const bySalon = (one) => (one.sure && isKnown() ? (now() - one.pressed) / pace() : -1);

const byDate = (one) => Math.max(0, Date.now() - one.date);

/**
 * How long ago it was pressed at most, in milliseconds. Of another page's press nobody can tell when the salon's time was
 * not known then: somebody may have set the device's clock back since.
 */
export function most(one) {
  if (one.page === PAGE) return utmost() - one.utmost;
  return one.sure ? Math.max(byDate(one), bySalon(one)) : Infinity;
}

/**
 * How long ago it was pressed, in milliseconds, and whether that is sure. Where the page lived through, its steady clock
 * tells, which stands still in sleep: steps forwards of the device's time of day are sleep where the salon's clock, known
 * then and now, went on as far, and a hand where it did not; while it is not known, or says something else, nobody can
 * tell. For another page the salon's clock tells, or else the device's, which somebody may have set.
 */
function aged(one) {
  const salon = bySalon(one);
  if (one.page !== PAGE) return { ms: salon < 0 ? byDate(one) : salon, sure: salon >= 0 };
  const longest = most(one);
  const steady = performance.now() - one.at;
  if (longest - steady <= SLEEP_MS) return { ms: steady, sure: true };
  if (salon < 0) return { ms: longest, sure: false };
  if (salon - steady <= SLEEP_MS) return { ms: steady, sure: true };
  return { ms: Math.min(salon, longest), sure: Math.abs(salon - longest) <= SLEEP_MS };
}

/** How long ago it was pressed, in milliseconds, as well as that can be known now. */
export const age = (one) => aged(one).ms;

async function fetchOnce(one) {
  const given = new AbortController();
  const slow = setTimeout(() => hooks.waits(), SLOW_MS);
  const over = setTimeout(() => given.abort(), NO_ANSWER_MS);
  if (!aged(one).sure) await measureAnew();
  const headers = { Accept: "text/html", "Rinsebell-Part": "answer" };
  if (one.again || age(one) > AT_ONCE_MS) headers["Rinsebell-Again"] = "true";
  const body = new URLSearchParams(one.body);
  if (one.who && !body.has("who")) body.set("who", one.who);
  const { ms, sure } = aged(one);
  body.set("age", String(Math.round(ms * pace())));
  if (!sure && !body.has("at")) body.set("told", "unsure");
  // Its age ends here; whoever is asleep on its way adds to it.
  if (isKnown()) headers["Rinsebell-Sent"] = String(Math.round(now()));
  try {
    const response = await fetch(one.action, { method: "POST", body, headers, signal: given.signal });
    // What something else answers, at the server's address or between here and there, is no answer; and the server itself
    // asks to be asked again while it does not know, and where the press did not come whole in time.
    if (!isOurs(response) || response.status === TOO_SLOW || response.headers.has("Retry-After")) return null;
    const next = response.headers.get("Rinsebell-Next") ?? (response.redirected ? response.url : "");
    const unsure = response.headers.has("Rinsebell-Unsure");
    return { ok: response.ok, unsure, next, erasings: erasings(response), html: await response.text() };
  } catch {
    return null;
  } finally {
    clearTimeout(slow);
    clearTimeout(over);
  }
}

// What must be answered is kept first, then the press is forgotten: whoever stops in between asks again and hears the
// same. What is left to do shows the answer, and may leave the page.
async function attempt(one) {
  const answer = await fetchOnce(one);
  if (!answer) {
    await note("presses", one.n, { again: true });
    hooks.waits();
    return undefined;
  }
  // Who could not be reached is there again, and may tell another time than before: the bells that come with it hang on it.
  if (one.again) measureAnew();
  else measureIfOwed();
  const show = await hooks.answered(one, answer);
  await remove("presses", one.n);
  // What does not count has quieted nothing.
  if (!answer.ok) document.dispatchEvent(new Event("refused"));
  hooks.gone();
  return show;
}

async function first() {
  const [one] = await all("presses");
  return one ? attempt(one) : NONE;
}

/** Sends until nothing waits. */
export async function send() {
  more = true;
  if (sending) return;
  sending = true;
  for (let wait = FIRST_WAIT_MS; more; ) {
    more = false;
    const show = await inTurn(first).catch(() => undefined);
    if (show === NONE) continue;
    more = true;
    if (show === BUSY) await pause(FIRST_WAIT_MS);
    else if (show) wait = (show(), FIRST_WAIT_MS);
    else await pause((wait = Math.min(wait * 2, LONGEST_WAIT_MS)));
  }
  sending = false;
}

/** Sends this one without waiting for its turn, once; if that fails it stands in line like any other. */
export async function sendAtOnce(one) {
  (await attempt(one))?.();
}

/**
 * `answered` takes each answer and gives what shows it; `waits` hears that something waits, `gone` that something no
 * longer does.
 */
export function start(told) {
  hooks = told;
  send();
}
