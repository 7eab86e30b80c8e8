// The mixing bench: a weight a step up or down for a finger in a wet glove, nothing typed is lost, and a
// tag comes out of the printer.

const value = (field) => Number(field.value.replace(",", ".")) || 0;

/** As often as it is pressed, by what the press says, and never below nothing. */
function nudge(press) {
  const field = document.getElementById(press.getAttribute("aria-controls"));
  field.value = String(Number(Math.max(0, value(field) + Number(press.dataset.nudge)).toFixed(2)));
}

// What was chosen and typed stands in the page's address, so that loading it again, or coming back, finds it there.
function keep(form) {
  const typed = new URLSearchParams(new FormData(form));
  typed.delete("press");
  history.replaceState(history.state, "", `${location.pathname}?${typed}`);
}

export function start() {
  document.addEventListener("click", ({ target }) => {
    const press = target.closest?.("[data-nudge]");
    if (press) nudge(press);
    if (target.closest?.("[data-print]")) print();
  });
  document.addEventListener("input", ({ target }) => {
    if (target.form?.querySelector(".default")) keep(target.form);
  });
}
