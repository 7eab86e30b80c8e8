// Has the browser keep this screen, so that it opens without the server. Only a service worker can do that, and browsers
// have one over HTTPS or on the machine itself; elsewhere a page is there as long as it stays open.

const SETTLED_MS = 3000;

let waiting;
let erased;

function keep(registration) {
  waiting ??= setTimeout(() => {
    waiting = undefined;
    registration.active.postMessage("keep");
  }, SETTLED_MS);
}

// Not with every beat: the worker would never rest.
function tell(registration, { detail }) {
  if (detail === erased) return;
  erased = detail;
  registration.active.postMessage({ erased });
}

/** Has it kept now, and whenever it shows something new; and has copies of before dropped when something was erased. */
export async function start() {
  try {
    await navigator.serviceWorker.register("/worker.js", { updateViaCache: "none" });
    const registration = await navigator.serviceWorker.ready;
    keep(registration);
    document.addEventListener("fragment", () => keep(registration));
    document.addEventListener("erased", (event) => tell(registration, event));
    document.addEventListener("connected", () => registration.update().catch(() => {}));
  } catch {
    // Not here: everything else works all the same.
  }
}
