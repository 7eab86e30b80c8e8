// What waits to be sent, and what a person has yet to answer, in the order it came. The browser's own database keeps
// it, so it outlives page and tab, and all tabs see the same. Where there is none it lives as long as the page.

const NAME = "rinsebell";
const SHELVES = ["presses", "questions", "turn"];

const memory = Object.fromEntries(SHELVES.map((shelf) => [shelf, new Map()]));
let last = 0;

const opened = new Promise((done) => {
  try {
    const request = indexedDB.open(NAME, 1);
    request.onupgradeneeded = () => SHELVES.forEach((shelf) => request.result.createObjectStore(shelf, { keyPath: "n", autoIncrement: true }));
    request.onsuccess = () => done(request.result);
    request.onerror = () => done(null);
  } catch {
    done(null);
  }
});

// "Strict" waits for the disk: a tablet may be dropped right after the press.
async function within(shelf, mode, work) {
  const database = await opened;
  if (!database) throw new Error("this browser keeps nothing");
  return new Promise((done, failed) => {
    const transaction = database.transaction(shelf, mode, { durability: "strict" });
    const answer = {};
    transaction.oncomplete = () => done(answer.value ?? answer.request?.result);
    transaction.onabort = () => failed(transaction.error);
    answer.request = work(transaction.objectStore(shelf), answer);
  });
}

/** Adds to the end, and tells the number that it got. */
export async function add(shelf, one) {
  try {
    return await within(shelf, "readwrite", (store) => store.add(one));
  } catch {
    const n = `page-${++last}`;
    memory[shelf].set(n, { ...one, n });
    return n;
  }
}

/** Everything, in order. */
export async function all(shelf) {
  const kept = await within(shelf, "readonly", (store) => store.getAll()).catch(() => []);
  return [...kept, ...memory[shelf].values()];
}

/** Takes out what has this number; nothing happens when it is gone. */
export async function remove(shelf, n) {
  if (!memory[shelf].delete(n)) await within(shelf, "readwrite", (store) => store.delete(n)).catch(() => {});
}

/** Notes something about what has this number, unless it is gone. */
export async function note(shelf, n, notes) {
  if (memory[shelf].has(n)) return void memory[shelf].set(n, { ...memory[shelf].get(n), ...notes });
  await within(shelf, "readwrite", (store) => {
    const found = store.get(n);
    found.onsuccess = () => found.result && store.put({ ...found.result, ...notes });
    return found;
  }).catch(() => {});
}

/** Takes the one turn for this owner until then, unless another has it; tells whether it was free or ours. */
export function claim(owner, now, until) {
  return within("turn", "readwrite", (store, answer) => {
    const found = store.get(1);
    found.onsuccess = () => {
      answer.value = !found.result || found.result.owner === owner || found.result.until < now;
      if (answer.value) store.put({ n: 1, owner, until });
    };
    return found;
  }).catch(() => true);
}
