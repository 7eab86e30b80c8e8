// Shows whether this device can be heard, lets the first touch switch its sound on, tells the salon that it listens, and
// works the page on which its sound is chosen.

import { clockTime, now } from "./clock.js";
import { checked, choose, chosen, muted } from "./device.js";
import { freshId } from "./press.js";
import { ear } from "./ring.js";
import { playNow, state, unlock } from "./sound.js";

const TELL_MS = 10000;
const MUTE_MS = 600000;
const tab = freshId();
/** Of the three ways to ring those that were tried on this page: only who has heard them can say so. */
const tried = new Set();
const WAYS = 3;
const TOUCHED = "rinsebell-sound";

// On, but nobody has tried it since the shift began.
const shown = () => (state() === "on" && !checked() ? "unchecked" : state());

function worded(element) {
  const text = element.dataset[shown()] ?? "";
  return text.replace("{0}", muted() ? clockTime(now() + chosen().mutedUntil - Date.now()) : "");
}

function show() {
  for (const button of document.querySelectorAll(".sound")) {
    button.hidden = shown() === "on";
    button.dataset.sound = shown();
    if (button.textContent !== worded(button)) button.textContent = worded(button);
  }
  for (const line of document.querySelectorAll("[data-device=state]")) line.textContent = worded(line);
  for (const choice of document.querySelectorAll("button[data-ear]")) choice.setAttribute("aria-pressed", choice.dataset.ear === chosen().ear);
  document.querySelector("[data-device=spoken]")?.setAttribute("aria-pressed", chosen().spoken);
  document.querySelector("[data-device=mute]")?.setAttribute("aria-pressed", muted());
  const heard = document.querySelector("[data-device=heard]");
  if (heard) heard.disabled = tried.size < WAYS;
}

// Not more than now and then, and never in the way: a device that can't tell is one that is not there.
function tell() {
  const body = new URLSearchParams({ tab, ear: ear(), state: state(), checked: checked() });
  fetch("/listening", { method: "POST", body, keepalive: true }).catch(() => {});
}

let told = "";
function changed() {
  show();
  const what = `${ear()} ${state()} ${checked()}`;
  if (what !== told) tell();
  told = what;
}

async function touched() {
  await unlock();
  // Kept for the pages after this one, which a browser lets sound without a touch where it lets them at all.
  sessionStorage.setItem(TOUCHED, "yes");
}

const works = {
  heard: () => choose({ checkedAt: Date.now() }),
  spoken: () => choose({ spoken: !chosen().spoken }),
  mute: () => choose({ mutedUntil: muted() ? 0 : Date.now() + MUTE_MS }),
};

function pressed(event) {
  const button = event.target.closest("button");
  if (!button) return;
  if (button.dataset.play) {
    playNow(button.dataset.play);
    tried.add(button.dataset.play);
    show();
  }
  if (button.dataset.ear !== undefined) choose({ ear: button.dataset.ear });
  works[button.dataset.device]?.();
  if (button.matches(".sound") && shown() === "unchecked") location.assign("/device");
}

/** Listens from now on. */
export function start() {
  if (document.documentElement.dataset.ear) choose({ last: document.documentElement.dataset.ear });
  const volume = document.querySelector("[data-device=volume]");
  if (volume) volume.value = chosen().volume;
  volume?.addEventListener("input", () => choose({ volume: Number(volume.value) }));
  if (sessionStorage.getItem(TOUCHED)) unlock();
  // Not while a finger is still down: what is shown changes, and a button would move away under it.
  addEventListener("click", touched, { once: true, capture: true });
  addEventListener("keydown", touched, { once: true });
  document.addEventListener("click", pressed);
  document.addEventListener("sound", changed);
  document.addEventListener("connected", tell);
  setInterval(changed, 1000);
  setInterval(tell, TELL_MS);
  changed();
}
