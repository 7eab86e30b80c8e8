// Tells the answers of the salon's server from those of whatever else stands at its address, such as the sign-in page of a
// network, which answers 200 to anything.

const OURS = "Rinsebell-Answer";

/** Whether it is the server's own; whoever else answers says as little as no answer does. */
export const isOurs = (answer) => answer.headers.has(OURS);
