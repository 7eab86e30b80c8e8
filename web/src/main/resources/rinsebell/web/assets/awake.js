// A screen that shows clocks stays awake where the browser lets it: over HTTPS, or on the machine itself. A phone in a pocket
// sleeps as it likes.

const isPocket = document.documentElement.dataset.board?.startsWith("pocket");

// The browser gives the lock back by itself whenever the page is out of sight.
function ask() {
  if (document.visibilityState === "visible") navigator.wakeLock.request("screen").catch(() => {});
}

/** Asks now, and each time the page is seen again. */
export function start() {
  if (!navigator.wakeLock || isPocket) return;
  document.addEventListener("visibilitychange", ask);
  ask();
}
