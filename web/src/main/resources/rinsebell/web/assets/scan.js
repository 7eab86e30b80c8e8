// A scanner that types what it reads: the link on a bowl opens that bowl, wherever one is.

/** After such a pause another scan begins; a scanner takes some milliseconds from key to key. No source. */
const PAUSE_MS = 500;

let read = "";
let last = 0;

// Only what this server itself put on a bowl is followed.
function bowl() {
  const [, path] = read.split(location.origin);
  return /^\/bowls\/\d+$/.test(path ?? "") ? path : "";
}

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
}
