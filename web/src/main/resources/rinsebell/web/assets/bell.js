// Sounds what rings: bursts of separate pulses, never a continuous tone. A browser allows sound only after a touch,
// so until then the page says that sound is off.
//
// Figures after IEC 60601-1-8 (from memory): ten pulses high, three medium, two low; pulses 150 and 200 ms long,
// with soft edges; a fundamental within 150 to 1000 Hz and at least four harmonics.

import { now } from "./clock.js";

const BURSTS = {
  high: { gaps: [0, 0.25, 0.5, 0.95, 1.2, 2.0, 2.25, 2.5, 2.95, 3.2], length: 0.15, edge: 0.03, every: 8000 },
  medium: { gaps: [0, 0.4, 0.8], length: 0.2, edge: 0.05, every: 20000 },
  low: { gaps: [0, 0.4], length: 0.2, edge: 0.06, every: 60000 },
};
const ORDER = ["calm", "asked", "low", "medium", "high"];
const FUNDAMENTAL_HZ = 523.25;
const HARMONICS = [0, 1, 0.7, 0.5, 0.4, 0.3];

const TOUCHED = "rinsebell-sound";

let audio = null;
let last = { urgency: "calm", at: -Infinity };

function pulse(wave, start, { length, edge }) {
  const tone = audio.createOscillator();
  const volume = audio.createGain();
  tone.setPeriodicWave(wave);
  tone.frequency.value = FUNDAMENTAL_HZ;
  volume.gain.setValueAtTime(0, start);
  volume.gain.linearRampToValueAtTime(0.5, start + edge);
  volume.gain.setValueAtTime(0.5, start + length - edge);
  volume.gain.linearRampToValueAtTime(0, start + length);
  tone.connect(volume).connect(audio.destination);
  tone.start(start);
  tone.stop(start + length);
}

function burst(urgency) {
  const wave = audio.createPeriodicWave(new Float32Array(HARMONICS.length), new Float32Array(HARMONICS));
  for (const gap of BURSTS[urgency].gaps) pulse(wave, audio.currentTime + 0.05 + gap, BURSTS[urgency]);
}

// Without the server nobody else watches the clock: what falls due meanwhile rings here.
function alone() {
  if (!document.documentElement.hasAttribute("data-alone")) return "calm";
  let loudest = "calm";
  for (const time of document.querySelectorAll("[data-alone]:not(html)")) {
    for (const bell of time.dataset.alone.split(" ")) {
      const [at, urgency] = bell.split(":");
      if (Number(at) > now()) continue;
      time.closest("[data-n], li")?.classList.add(urgency);
      if (ORDER.indexOf(urgency) > ORDER.indexOf(loudest)) loudest = urgency;
    }
  }
  return loudest;
}

/** The loudest urgency that nobody has heard. */
export function loudest() {
  const told = document.getElementById("bells")?.dataset.loudest ?? "calm";
  return [told, alone()].sort((a, b) => ORDER.indexOf(b) - ORDER.indexOf(a))[0];
}

function ring() {
  const urgency = loudest();
  if (!(urgency in BURSTS)) {
    last = { urgency, at: -Infinity };
    return;
  }
  const at = performance.now();
  if (urgency === last.urgency && at - last.at < BURSTS[urgency].every) return;
  last = { urgency, at };
  if (audio?.state === "running") burst(urgency);
}

function switched(button) {
  const on = audio?.state === "running";
  button.dataset.sound = on ? "on" : "off";
  button.textContent = on ? button.dataset.on : button.dataset.off;
}

// Kept for the pages after this one, which a browser lets sound without a touch of their own where it lets them at all.
async function unlock(button) {
  if (!audio) {
    audio = new AudioContext();
    audio.onstatechange = () => switched(button);
  }
  await audio.resume();
  sessionStorage.setItem(TOUCHED, "yes");
  switched(button);
}

/** Shows whether sound is on, and lets the first touch anywhere switch it on. */
export function start() {
  const button = document.querySelector(".sound");
  if (!button || typeof AudioContext === "undefined") return;
  button.hidden = false;
  switched(button);
  if (sessionStorage.getItem(TOUCHED)) unlock(button);
  addEventListener("pointerdown", () => unlock(button), { once: true });
  addEventListener("keydown", () => unlock(button), { once: true });
  button.addEventListener("click", () => unlock(button));
  setInterval(ring, 500);
}
