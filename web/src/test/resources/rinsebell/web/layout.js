// What a gloved knuckle would miss on this page, in words; run inside the page by LayoutIT.
() => {
  const TARGET = 63.5;
  const APART = 11.5;
  const found = [];
  const root = document.documentElement;
  if (root.scrollWidth > root.clientWidth) found.push(`scrolls sideways: ${root.scrollWidth} in ${root.clientWidth}`);

  const shown = (element) =>
    element.getClientRects().length > 0 &&
    getComputedStyle(element).visibility !== "hidden" &&
    !element.classList.contains("skip") &&
    !(element.tagName === "INPUT" && element.closest(".tile")) &&
    element.type !== "hidden";
  // What opens by its whole row is stretched over what it is placed in.
  const box = (element) => (element.classList.contains("open") ? element.offsetParent : element).getBoundingClientRect();
  const name = (element) => `${element.tagName.toLowerCase()} "${element.textContent.trim().replace(/\s+/g, " ").slice(0, 30)}"`;
  // What sticks to the screen's edge lies over what scrolls beneath it; only things of one layer can be too near.
  const layer = (element) => {
    for (let at = element; at; at = at.parentElement) {
      if (["sticky", "fixed"].includes(getComputedStyle(at).position)) return at;
    }
    return null;
  };

  const targets = [...document.querySelectorAll("a, button, label.tile, input, select, textarea, summary")]
    .filter(shown)
    .map((element) => ({ element, box: box(element), layer: layer(element) }));
  for (const { element, box } of targets) {
    if (box.width < TARGET || box.height < TARGET) found.push(`too small: ${name(element)} ${box.width} x ${box.height}`);
  }
  targets.forEach((one, i) => {
    for (const other of targets.slice(i + 1)) {
      if (one.layer !== other.layer) continue;
      const across = Math.max(one.box.left - other.box.right, other.box.left - one.box.right);
      const down = Math.max(one.box.top - other.box.bottom, other.box.top - one.box.bottom);
      const gap = Math.max(across, down);
      if (gap < APART) found.push(`${gap} px apart: ${name(one.element)} and ${name(other.element)}`);
    }
  });
  return found;
}
