// One tab of a browser does a thing at a time.

import { claim } from "./queue.js";

const NAME = "rinsebell-presses";
const LEASE_MS = 4000;
const RENEW_MS = 1000;

/** What `inTurn` gives when another tab is at it. */
export const BUSY = "busy";

/** This page, until it is loaded again. */
export const PAGE = `${performance.timeOrigin}-${Math.random()}`;

const lease = (ms) => claim(PAGE, Date.now(), Date.now() + ms);

// Locks are missing over plain HTTP: there a row that runs out by itself stands for one. Whoever is wrong about the
// time, or asleep, can make two tabs send the same press; both send the first that waits, under the same id.
async function leased(work) {
  if (!(await lease(LEASE_MS))) return BUSY;
  const renewing = setInterval(() => lease(LEASE_MS), RENEW_MS);
  try {
    return await work();
  } finally {
    clearInterval(renewing);
    await lease(-1);
  }
}

/** Does it unless another tab does. */
export function inTurn(work) {
  if (!navigator.locks) return leased(work);
  return navigator.locks.request(NAME, { ifAvailable: true }, (lock) => (lock ? work() : BUSY));
}
