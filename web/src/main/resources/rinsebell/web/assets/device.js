// What was chosen for this device: for whom it rings, how loud, whether it speaks, whether it is quiet for a while. Kept in
// the browser, since it is of the device and not of the salon.

const KEPT = "rinsebell-device";
const CHECK_MS = 16 * 3600 * 1000;
const USUAL = { ear: "", last: "", volume: 1, spoken: false, mutedUntil: 0, checkedAt: 0 };

let held = null;

function read() {
  try {
    return { ...USUAL, ...JSON.parse(localStorage.getItem(KEPT)) };
  } catch {
    return { ...USUAL };
  }
}

/** The choices as they stand. */
export const chosen = () => (held ??= read());

/** Changes some of them, for this page and the next. */
export function choose(some) {
  held = { ...read(), ...some };
  try {
    localStorage.setItem(KEPT, JSON.stringify(held));
  } catch {
    // A browser that keeps nothing still knows it while the page is open.
  }
  document.dispatchEvent(new Event("sound"));
}

// A device's own clock will do for how long it is quiet: nothing that happens to hair hangs on it.
export const muted = () => chosen().mutedUntil > Date.now();

/** Whether somebody has heard this device ring since the shift began. */
export const checked = () => Date.now() - chosen().checkedAt < CHECK_MS;

addEventListener("storage", (event) => {
  if (event.key !== KEPT) return;
  held = null;
  document.dispatchEvent(new Event("sound"));
});
