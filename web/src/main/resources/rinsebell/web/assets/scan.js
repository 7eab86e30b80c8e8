// A scanner that types what it reads: the link on a bowl opens that bowl, wherever one is.

/** After such a pause another scan begins; a scanner takes some milliseconds from key to key. No source. */
const PAUSE_MS = 500;

let read = "";
let last = 0;

// Only what this server itself put on a bowl is followed.
const bowl = () => {
  const link = read.slice(Math.max(0, read.lastIndexOf("http"))).trim();
  return URL.canParse(link) && new URL(link).origin === location.origin && /^\/bowls\/\d+$/.test(new URL(link).pathname) ? link : "";
};

export function start() {
  document.addEventListener(
    "keydown",
    (event) => {
      const now = event.timeStamp;
      if (now - last > PAUSE_MS) read = "";
      last = now;
      if (event.key.length === 1) read += event.key;
      if (event.key !== "Enter" || !bowl()) return;
      event.preventDefault();
      location.assign(bowl());
    },
    { capture: true },
  );
  document.addEventListener("click", ({ target }) => {
    if (target.closest?.("[data-print]")) print();
  });
}
