// The salon's time on this screen: the server's instant, carried on by a clock that no hand can set.

const root = document.documentElement;
const anchor = { server: Number(root.dataset.now), local: performance.now(), date: Date.now(), speed: 1 };

// performance.now() stands still while a device sleeps, and Date.now() jumps when its clock is set. The larger step
// of the two is taken only when it can be sleep: forwards, until the next word from the server.
const elapsed = () => {
  const steady = performance.now() - anchor.local;
  const wall = Date.now() - anchor.date;
  return wall - steady > 2000 ? wall : steady;
};

/** Milliseconds since 1970 by the server's clock. */
export const now = () => anchor.server + elapsed() * anchor.speed;

/** Takes the server's word for what time it is; `speed` is how many of its seconds pass in one of ours. */
export function set(server, speed = anchor.speed) {
  Object.assign(anchor, { server, local: performance.now(), date: Date.now(), speed });
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
