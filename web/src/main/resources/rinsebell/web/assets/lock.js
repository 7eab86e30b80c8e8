// A private page that nobody touches locks again, as the server does: it shows the way to unlock it, and what was typed in it
// is covered until then, and kept. Bells ring on.

const IDLE_MS = 120000;
const STAY_MS = 30000;
const LOOK_MS = 1000;
const RETRY_MS = 3000;
const TOUCHES = ["pointerdown", "keydown", "input"];

const root = document.documentElement;
const main = document.getElementById("main");

let touched = performance.now();
let told = touched;
// A form that came back with what is wrong in it holds what was typed.
let typed = document.querySelector("#main .problem") !== null;
let veil;

// What was looked for was sent, so the page that shows it has no address of its own.
const here = () => location.pathname.replace(/\/find$/, "") + location.search;
const address = () => `/unlock?matter=${root.dataset.private}&page=${encodeURIComponent(here())}`;

function touch(event) {
  if (veil) return;
  touched = performance.now();
  typed ||= event.type === "input";
  if (touched - told < STAY_MS) return;
  told = touched;
  fetch("/unlock/stay", { method: "POST" })
    .then((answer) => answer.status === 403 && !veil && close())
    .catch(() => {});
}

function close() {
  if (typed) cover();
  else location.replace(address());
}

async function ask(request, options) {
  const answer = await fetch(request, options);
  if (new URL(answer.url).pathname !== "/unlock" && answer.ok) return uncover();
  const page = new DOMParser().parseFromString(await answer.text(), "text/html");
  veil.replaceChildren(...page.getElementById("main").childNodes);
  veil.querySelector("input[type=password]")?.focus();
}

function uncover() {
  veil.remove();
  veil = undefined;
  main.hidden = false;
  touched = told = performance.now();
  main.focus();
}

function submit(event) {
  event.preventDefault();
  const body = new URLSearchParams(new FormData(event.target));
  body.set("page", "/me");
  ask("/unlock", { method: "POST", body }).catch(() => {});
}

function cover() {
  veil = document.createElement("div");
  veil.className = "veil";
  veil.addEventListener("submit", submit);
  main.hidden = true;
  main.before(veil);
  askUntilHeard();
}

// What was typed stays where it is until the server answers, however long that takes.
function askUntilHeard() {
  if (veil) ask(address()).catch(() => setTimeout(askUntilHeard, RETRY_MS));
}

function look() {
  if (veil || performance.now() - touched < IDLE_MS) return;
  close();
}

/** Watches over a page that a PIN has opened; any other is left alone. */
export function start() {
  if (root.dataset.private === undefined) return;
  for (const type of TOUCHES) addEventListener(type, touch, true);
  addEventListener("pageshow", (event) => event.persisted && location.reload());
  setInterval(look, LOOK_MS);
}
