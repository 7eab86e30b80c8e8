// Has the browser keep this screen, so that it opens without the server. Only a service worker can do that, and browsers
// have one over HTTPS or on the machine itself; elsewhere a page is there as long as it stays open.

const SETTLED_MS = 3000;

let waiting;

function keep(registration) {
  waiting ??= setTimeout(() => {
    waiting = undefined;
    registration.active.postMessage("keep");
  }, SETTLED_MS);
}

/** Has it kept now, and whenever it shows something new. */
export async function start() {
  try {
    await navigator.serviceWorker.register("/worker.js", { updateViaCache: "none" });
    const registration = await navigator.serviceWorker.ready;
    keep(registration);
    document.addEventListener("fragment", () => keep(registration));
    document.addEventListener("connected", () => registration.update().catch(() => {}));
  } catch {
    // Not here: everything else works all the same.
  }
}
