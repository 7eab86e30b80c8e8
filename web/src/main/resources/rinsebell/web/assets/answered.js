// What this device has answered itself is quiet on it at once, before the server has said so, and without the server too.
// It is quiet for no longer than the house's interval, and what comes to a further stage rings again. A rinse is never
// put off by it: its instants stay those of the plan.

import { now } from "./clock.js";

const RINSED_MS = 600000;
// The shortest time after which a look is taken again, where the press does not name one.
const LOOK_MS = 180000;

let answered = [];

const kindOf = (id) => id.split("-")[1];
const ofVisit = (number) => (one) => one.href === `/visits/${number}`;

// Which bells a press answers, and for how long at most.
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
    return { is: (one) => ofVisit(number)(one) && kindOf(one.id) === looks, ms: minutes > 0 ? minutes * 60000 : LOOK_MS };
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
  return answered.some(({ is, ms, since }) => is(one, all) && turn.from <= since && at < since + (ms ?? again(turn.urgency)));
}

/** Forgets all, since the server knows what it was told: its plan says what is quiet. */
export const forget = () => (answered = []);

/** Notes what a form that is sent answers. */
export function note(form, submitter) {
  const what = answer(new URL(form.action), new FormData(form, submitter));
  if (what) answered = [...answered.filter((one) => now() - one.since < RINSED_MS), { ...what, since: now() }];
}
