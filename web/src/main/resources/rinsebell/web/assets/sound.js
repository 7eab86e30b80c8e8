// The sounds of a device: bursts of separate pulses, never a continuous tone. A browser allows sound only after a touch.
//
// Figures after IEC 60601-1-8 (tables 3 and 4, from memory): ten pulses high, three medium, two low; pulses 75 to 200 ms
// long (high) or 125 to 250 ms, with 50 to 125 ms between them (high) or 125 to 250 ms; edges of 10 to 40 % of a pulse; a
// fundamental within 150 to 1000 Hz and at least four harmonics within 15 dB of it; a burst again after 2.5 to 15 s
// (high), 2.5 to 30 s (medium), more than 15 s (low).

import { chosen, muted } from "./device.js";

export const BURSTS = {
  high: { starts: [0, 0.25, 0.5, 1.0, 1.25, 2.0, 2.25, 2.5, 3.0, 3.25], length: 0.15, edge: 0.03, every: 8000, hertz: 659.26 },
  medium: { starts: [0, 0.4, 0.8], length: 0.2, edge: 0.05, every: 20000, hertz: 523.25 },
  low: { starts: [0, 0.4], length: 0.2, edge: 0.06, every: 60000, hertz: 392 },
};
const HARMONICS = [0, 1, 0.7, 0.5, 0.4, 0.3];
const LOUD = 0.5;
const BEGIN_S = 0.05;
// Several pages of one browser are one device: a page that is not seen leaves it to one that is.
const HIDDEN_MS = 400;

let audio = null;
let last = { urgency: "calm", keys: [], at: -Infinity };
let elsewhere = -Infinity;
const others = typeof BroadcastChannel === "undefined" ? null : new BroadcastChannel("rinsebell-ring");
if (others) others.onmessage = () => (elsewhere = performance.now());
const spoken = new Set();

function pulse(context, wave, start, { length, edge, hertz }, volume) {
  const tone = context.createOscillator();
  const gain = context.createGain();
  tone.setPeriodicWave(wave);
  tone.frequency.value = hertz;
  gain.gain.setValueAtTime(0, start);
  gain.gain.linearRampToValueAtTime(volume, start + edge);
  gain.gain.setValueAtTime(volume, start + length - edge);
  gain.gain.linearRampToValueAtTime(0, start + length);
  tone.connect(gain).connect(context.destination);
  tone.start(start);
  tone.stop(start + length);
}

/** Plays one burst into an audio context, so that a test can measure what is played. */
export function burst(context, urgency, volume = 1) {
  const wave = context.createPeriodicWave(new Float32Array(HARMONICS.length), new Float32Array(HARMONICS));
  const begin = context.currentTime + BEGIN_S;
  for (const start of BURSTS[urgency].starts) pulse(context, wave, begin + start, BURSTS[urgency], LOUD * volume);
}

/** Whether this device can sound: on, muted, off (no touch yet, or the system took the sound away), none. */
export function state() {
  if (typeof AudioContext === "undefined") return "none";
  if (muted()) return "muted";
  return audio?.state === "running" ? "on" : "off";
}

/** Lets the browser sound; only a touch or a key can. */
export async function unlock() {
  if (typeof AudioContext === "undefined") return;
  if (!audio) {
    audio = new AudioContext();
    audio.onstatechange = changed;
  }
  await audio.resume();
  changed();
}

const changed = () => document.dispatchEvent(new Event("sound"));

function play(urgency, keys) {
  others?.postMessage(urgency);
  burst(audio, urgency, chosen().volume);
  document.dispatchEvent(new CustomEvent("sounded", { detail: keys }));
}

/** Plays what is asked for at once, whatever rings: for the sound check. */
export async function playNow(urgency) {
  await unlock();
  if (audio?.state === "running") burst(audio, urgency, chosen().volume);
}

/**
 * Sounds an urgency: at once when it is new, louder, has a bell more, or this device could not sound before; and again after
 * its interval.
 *
 * @param keys what rings, one key for each
 */
export function sound(urgency, keys) {
  if (!(urgency in BURSTS) || state() !== "on") {
    last = { urgency: "calm", keys: [], at: -Infinity };
    return;
  }
  const at = performance.now();
  const fresh = urgency !== last.urgency || keys.some((key) => !last.keys.includes(key));
  const due = fresh || at - last.at >= BURSTS[urgency].every;
  last = { urgency, keys, at: due ? at : last.at };
  if (!due) return;
  if (document.visibilityState === "visible") play(urgency, keys);
  else setTimeout(() => performance.now() - elsewhere > 2 * HIDDEN_MS && play(urgency, keys), HIDDEN_MS);
}

/** Says each line once, after the burst of what it is for. */
export function speak(lines) {
  if (typeof speechSynthesis === "undefined" || state() !== "on") return;
  for (const { key, text } of lines) {
    if (spoken.has(key)) continue;
    spoken.add(key);
    const said = new SpeechSynthesisUtterance(text);
    Object.assign(said, { lang: "en-GB", volume: chosen().volume });
    setTimeout(() => speechSynthesis.speak(said), 1500);
  }
}
