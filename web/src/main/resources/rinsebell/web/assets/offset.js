// How far another clock is ahead of ours, and how sure that is, after the Network Time Protocol (RFC 5905). Times are
// milliseconds; "at" is by our own clock.

/** RFC 5905, section 7.1: how fast two clocks may run apart, in seconds a second. */
const PHI = 15e-6;
/** The server tells whole milliseconds. */
const PRECISION_MS = 1;
/** RFC 5905, section 7.1: a clock filter has eight stages. */
const STAGES = 8;
/** What noise has moved is made good by running faster or slower by half, so that no clock on a screen jumps. */
const SLEW = 0.5;
/** A larger correction is a step even when it could be noise. */
const LARGEST_SLEW_MS = 2000;

/**
 * One question and its answer: t1 asked and t4 answered by our clock, t2 received and t3 sent by the other. RFC 5905,
 * section 8: theta = ((t2 - t1) + (t3 - t4)) / 2, delta = (t4 - t1) - (t3 - t2).
 */
export const roundTrip = (t1, t2, t3, t4) => ({ offset: (t2 - t1 + (t3 - t4)) / 2, delay: t4 - t1 - (t3 - t2), at: t4 });

/** How far the offset of a round trip can be wrong by now. */
export const bound = (trip, now) => trip.delay / 2 + PRECISION_MS + PHI * Math.max(0, now - trip.at);

/** The surest of several; of equally sure ones the latest. */
export const surest = (trips, now) => trips.reduce((a, b) => (bound(b, now) <= bound(a, now) ? b : a));

/** Whether both can be true. */
export const agree = (a, b, now) => Math.abs(a.offset - b.offset) <= bound(a, now) + bound(b, now);

/** What is remembered after a fresh one: where it contradicts what was known, one of the clocks was set, and it alone. */
export function remembered(trips, fresh) {
  const agrees = trips.length > 0 && agree(surest(trips, fresh.at), fresh, fresh.at);
  return agrees ? [...trips, fresh].slice(-STAGES) : [fresh];
}

/** Whether a correction is made little by little, rather than as a step. */
export const isSlewed = (correction) => Math.abs(correction) <= LARGEST_SLEW_MS;

/** What is left of a correction that began `passed` ago. */
export const slewed = (correction, passed) => Math.sign(correction) * Math.max(0, Math.abs(correction) - passed * SLEW);
