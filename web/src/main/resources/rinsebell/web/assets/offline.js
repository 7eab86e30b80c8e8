// Has the browser keep this screen, so that it opens without the server. Only a service worker can do that, and browsers
// have one over HTTPS or on the machine itself; elsewhere a page is there as long as it stays open.

const SETTLED_MS = 3000;
/** For so long a copy that was asked for ahead is good enough. */
const AHEAD_MS = 300000;
const MOST_AHEAD = 16;

const ahead = new Map();
let waiting;
let erased;

// The floor, and the heads that this page leads to: a look at a strand must be open to whoever stands there without the
// server. Nothing else, for to open it may change something: a phone's page, whose it is.
function leadsTo() {
  const links = [...document.querySelectorAll("main a[href^='/visits/']")].map((link) => link.getAttribute("href"));
  const due = ["/", ...new Set(links)].filter((one) => !(performance.now() - ahead.get(one) < AHEAD_MS)).slice(0, MOST_AHEAD);
  for (const one of due) ahead.set(one, performance.now());
  return due;
}

function keep(registration) {
  waiting ??= setTimeout(() => {
    waiting = undefined;
    registration.active.postMessage("keep");
    registration.active.postMessage({ ahead: leadsTo() });
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
