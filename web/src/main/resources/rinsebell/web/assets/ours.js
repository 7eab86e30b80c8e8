// Tells the answers of the salon's server from those of whatever else stands at its address, such as the sign-in page of a
// network, which answers 200 to anything.

const OURS = "Rinsebell-Answer";
const ERASED = "Rinsebell-Erased";

/** Whether it is the server's own; whoever else answers says as little as no answer does. */
export const isOurs = (answer) => answer.headers.has(OURS);

/** How often something had been erased in the salon by then; an answer from the door tells of nobody, so it is never too old. */
export const erasings = (answer) => (answer.headers.has(ERASED) ? Number(answer.headers.get(ERASED)) : Infinity);
