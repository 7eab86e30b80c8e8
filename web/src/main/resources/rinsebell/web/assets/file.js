// A file that is chosen fills the box in which its text could be typed; without script the box is all there is.

async function fill(choose) {
  if (choose.files.length > 0) {
    document.getElementById(choose.dataset.fills).value = await choose.files[0].text();
  }
}

export function start() {
  for (const choose of document.querySelectorAll("[data-fills]")) {
    choose.hidden = false;
    choose.addEventListener("change", () => fill(choose));
  }
}
