// Starts what this page needs.

import { start as stayAwake } from "./awake.js";
import { start as startListening } from "./listen.js";
import { tick } from "./clock.js";
import { start as startFeed } from "./feed.js";
import { start as startKeeping } from "./offline.js";
import { start as startPresses } from "./press.js";
import { start as startBench } from "./bench.js";
import { start as startLocking } from "./lock.js";
import { start as startFiles } from "./file.js";
import { panAll } from "./ribbon.js";
import { start as startNoting } from "./sounded.js";
import { start as startScanning } from "./scan.js";
import { start as startSync } from "./sync.js";
import { start as startRinging } from "./ring.js";

function beat() {
  tick();
  panAll();
}

beat();
setInterval(beat, 500);
addEventListener("resize", () => panAll());
document.fonts?.ready.then(beat);
startSync();
startPresses();
startFeed();
startNoting();
startBench();
startFiles();
startScanning();
startRinging();
startListening();
startKeeping();
startLocking();
stayAwake();
