// Reads an event stream that came as a whole, as a browser reads one that goes on (HTML Living Standard, section 9.2.6,
// "Interpreting an event stream").

/** The events of a stream, in their order; what no blank line ends is none. */
export function events(stream) {
  const all = [];
  let lastId = "";
  let type = "";
  let data = [];
  for (const line of stream.replace(/^\uFEFF/, "").split(/\r\n|\n|\r/).slice(0, -1)) {
    const [, field, value = ""] = line.match(/^([^:]*)(?:: ?(.*))?$/s);
    if (field === "data") data.push(value);
    else if (field === "event") type = value;
    else if (field === "id" && !value.includes("\0")) lastId = value;
    if (line !== "") continue;
    if (data.length > 0) all.push({ type: type || "message", data: data.join("\n"), lastEventId: lastId });
    [type, data] = ["", []];
  }
  return all;
}
