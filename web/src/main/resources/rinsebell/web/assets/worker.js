// The service worker: keeps style and scripts, and the last copy of every screen that this device has shown, so that a
// page opens when the server does not answer. What waits to be sent never comes by here, nor does the feed. It is served
// from the root with the addresses of all files before it, as ASSETS; so it is another one when one of them is.

const SHELF = `rinsebell-assets${ASSETS[0]}`;
const PAGES = "rinsebell-pages";
/** What stands in for a page that is not kept. */
const STAND_IN = "/kept";
/** Screens and what is pressed on them; not records of clients, nor reports. */
const SCREENS = /^\/(basins|desk|bells|pocket|device|welcome|bowls|bowls\/mix|bowls\/\d+|mixtures|mixtures\/weigh|visits\/\d+(\/(?!client$)[a-z-]+)?)?$/;
/** By this header the server tells how often something was erased, and a copy of what time it is. */
const ERASED = "Rinsebell-Erased";
/** Every answer of the server carries this header; whoever else stands at its address says as little as nobody does. */
const OURS = "Rinsebell-Answer";
/** For so long an answer is waited for when there is a copy. */
const PATIENCE_MS = 3000;
/** Longer than any day in a salon: a floor of another day is of no use. */
const OLDEST_MS = 16 * 3600 * 1000;
const MOST = 40;

/** Under what a page is kept: not with what the last press led to. */
function name(address) {
  const url = new URL(address);
  url.searchParams.delete("done");
  return url.pathname + url.search;
}

const pages = () => caches.open(PAGES);
// Where a redirect of a page leads is not told, nor who says so.
const isOurs = (answer) => answer.type === "opaqueredirect" || answer.headers.has(OURS);
const isFresh = (page) => Date.now() - page.headers.get("Kept") < OLDEST_MS;

async function asked(address) {
  const answer = await fetch(address);
  if (!isOurs(answer)) throw new Error("somebody else answers");
  return answer;
}

async function store(shelf, address) {
  const answer = await asked(address);
  if (!answer.ok) throw new Error("it is not there");
  await shelf.put(address, answer);
}

async function stock() {
  const shelf = await caches.open(SHELF);
  await Promise.all([...ASSETS, STAND_IN].map((address) => store(shelf, address)));
}

let turns = 0;
const answered = new Map();
/** How often something had been erased in the salon when it was last heard of. */
let erasings = -1;

// Of two answers that come together the one that was asked for later is kept.
async function keep(address) {
  const at = name(address);
  if (!SCREENS.test(new URL(address).pathname)) return;
  const turn = ++turns;
  const answer = await asked(at);
  const html = await answer.text();
  if (turn < answered.get(at)) return;
  answered.set(at, turn);
  if (answer.redirected || [403, 404, 410].includes(answer.status)) await (await pages()).delete(at);
  else if (answer.ok && Number(answer.headers.get(ERASED)) >= erasings) await put(at, html, answer.headers);
}

async function put(at, html, answer) {
  const shelf = await pages();
  const policy = answer.get("Content-Security-Policy");
  const headers = { "Content-Type": "text/html; charset=utf-8", "Content-Security-Policy": policy, Kept: Date.now() };
  await shelf.put(at, new Response(html, { headers: { ...headers, [ERASED]: answer.get(ERASED) ?? 0 } }));
  // Something may have been erased while it was put away.
  if (Number(answer.get(ERASED)) < erasings) await shelf.delete(at);
  for (const old of (await shelf.keys()).slice(0, -MOST)) await shelf.delete(old);
}

// What was erased in the salon goes from this device as well: copies of before are dropped, and then asked for anew.
async function erased(number) {
  if (!(number > erasings)) return;
  erasings = number;
  const shelf = await pages();
  const all = await Promise.all((await shelf.keys()).map(async (one) => ({ url: one.url, page: await shelf.match(one) })));
  const before = all.filter(({ page }) => Number(page.headers.get(ERASED)) !== number || !isFresh(page));
  for (const { url } of before) await shelf.delete(url);
  for (const { url } of before) await keep(url).catch(() => {});
}

// The files of before go only when no page that is kept asks for them any more.
async function renew() {
  for (const { url } of await (await pages()).keys()) await keep(url);
  for (const shelf of await caches.keys()) if (![SHELF, PAGES].includes(shelf)) await caches.delete(shelf);
}

/** The copy of a page, which says of itself since when it is one. */
async function copy(address) {
  const found = await (await pages()).match(name(address));
  if (!found || !isFresh(found)) return null;
  const html = (await found.text()).replace("<html ", `<html data-kept="${found.headers.get("Kept")}" `);
  return new Response(html, { headers: found.headers });
}

async function item(shelf, { url }) {
  const page = await shelf.match(url);
  const title = (await page.text()).match(/<title>(.*?)<\/title>/s)[1];
  return isFresh(page) ? `<li><a href="${name(url).replaceAll("&", "&amp;")}">${title}</a></li>` : "";
}

async function standIn() {
  const shelf = await pages();
  const items = await Promise.all((await shelf.keys()).map((one) => item(shelf, one)));
  const page = await (await caches.open(SHELF)).match(STAND_IN);
  const html = (await page.text()).replace('<ul class="screens">', (list) => list + items.join(""));
  return new Response(html, { headers: { "Content-Type": "text/html; charset=utf-8", Refresh: "10" } });
}

const fetched = (request) => fetch(request).then((answer) => (isOurs(answer) ? answer : null), () => null);

async function open(request, then) {
  const answer = fetched(request);
  // A redirect tells nothing.
  then(answer.then((page) => page?.headers.has(ERASED) && erased(Number(page.headers.get(ERASED)))).catch(() => {}));
  const kept = await copy(request.url);
  const late = kept ? new Promise((done) => setTimeout(done, PATIENCE_MS)) : answer;
  return (await Promise.race([answer, late])) ?? kept ?? standIn();
}

const file = async (request) => (await caches.match(request)) ?? (await fetched(request)) ?? Response.error();

self.addEventListener("install", (event) => {
  self.skipWaiting();
  event.waitUntil(stock());
});
self.addEventListener("activate", (event) => event.waitUntil(renew().catch(() => {})));
self.addEventListener("message", (event) => {
  const work = event.data === "keep" ? keep(event.source.url) : erased(event.data.erased);
  event.waitUntil(work.catch(() => {}));
});
self.addEventListener("fetch", (event) => {
  const { method, mode, url } = event.request;
  const { origin, pathname } = new URL(url);
  if (method !== "GET" || origin !== location.origin) return;
  if (pathname.startsWith("/assets/")) event.respondWith(file(event.request));
  else if (mode === "navigate") event.respondWith(open(event.request, (work) => event.waitUntil(work)));
});
