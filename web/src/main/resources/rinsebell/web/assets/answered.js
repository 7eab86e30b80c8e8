// What this device has answered itself is quiet on it at once, before the server has said so, and without the server too.
// It is quiet for no longer than the house's interval, by the salon's time and by the device's own count: one may be put
// back, and no sleep stops the other. What comes to a further stage rings again; a look makes the next one due after its
// interval. A rinse is never put off by it: its instants stay those of the plan.

import { now, pace } from "./clock.js";
import { all as waiting } from "./queue.js";
import { most } from "./send.js";
import { utmost } from "./sync.js";

const RINSED_MS = 600000;
// The shortest time after which a look is taken again, where the press does not name one.
const LOOK_MS = 180000;

let answered = [];

const kindOf = (id) => id.split("-")[1];
const ofVisit = (number) => (one) => one.href === `/visits/${number}`;

// Which bells a press answers, and for how long at most; or after how long a bell is due again.
function answer(address, fields) {
  if (address.pathname === "/bells/acknowledge") {
    const [kind, subject, anchor] = ["kind", "subject", "anchor"].map((name) => address.searchParams.get(name) ?? fields.get(name));
    const id = `bell-${kind?.toLowerCase().replaceAll("-", "_")}-${subject}-${anchor}`;
    return { is: (one, all) => one.id === id || one.round === all.find((other) => other.id === id)?.round, ms: null };
  }
  const [, number, press] = address.pathname.match(/^\/visits\/(\d+)\/([a-z-]+)$/) ?? [];
  const looks = { strand: "strand_check", scalp: "scalp_check" }[press];
  if (looks) {
    const minutes = Number(fields.get("decision"));
    return { is: (one) => ofVisit(number)(one) && kindOf(one.id) === looks, due: minutes > 0 ? minutes * 60000 : LOOK_MS };
  }
  if (press === "rinse") return { is: (one) => ofVisit(number)(one) && !["burning", "hot_foil"].includes(kindOf(one.id)), ms: RINSED_MS };
  return null;
}

// After how long what was heard rings again in this house, by urgency: it comes with the plan.
function again(urgency) {
  const told = document.querySelector("#bells .rung")?.dataset.again ?? "";
  return Number(told.split(" ").find((one) => one.startsWith(`${urgency}:`))?.split(":")[1] ?? 0);
}

/** Whether a bell, in the turn that it is in, was answered on this device a short while ago. */
export function isAnswered(one, turn, all, at) {
  const isQuiet = (since, own, ms) => at < since + ms && (utmost() - own) * pace() < ms;
  return answered.some(
    ({ is, ms, since, own }) =>
      ms !== undefined && is(one, all) && turn.from <= since && isQuiet(since, own, ms ?? again(turn.urgency)),
  );
}

/** A bell with the instants that it has after the looks that were taken here. */
export function moved(one) {
  const look = answered.filter(({ is, due }) => due && is(one)).pop();
  const by = look ? Math.max(0, look.since + look.due - one.counts) : 0;
  return { ...one, counts: one.counts + by, turns: one.turns.map((turn) => ({ ...turn, from: turn.from + by })) };
}

function take(action, fields, ageMs) {
  const what = answer(new URL(action), fields);
  if (!what) return;
  const since = now() - ageMs * pace();
  answered = [...answered.filter((one) => since - one.since < RINSED_MS), { ...what, since, own: utmost() - ageMs }];
}

/** Notes what a form that is sent answers. */
export const note = (form, submitter) => take(form.action, new FormData(form, submitter), 0);

/** Notes again what still waits to be sent, on whatever page it was pressed. */
export async function recall() {
  for (const one of await waiting("presses")) take(one.action, new URLSearchParams(one.body), most(one));
}

/** Forgets what the server has been told: its plan says what is quiet. */
export function forget() {
  answered = [];
  recall();
}
