// Starts what this page needs.

import { tick } from "./clock.js";
import { panAll } from "./ribbon.js";

function beat() {
  tick();
  panAll();
}

beat();
setInterval(beat, 1000);
addEventListener("resize", () => panAll());
document.fonts?.ready.then(beat);
