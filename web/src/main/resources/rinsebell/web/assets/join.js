// The code of an invitation stands behind the number sign of its link, where no browser sends or logs it: this takes it out of
// the address and sends it to be looked at.

const form = document.querySelector("form[data-code]");
const code = location.hash.slice(1);

if (form && code) {
  history.replaceState(null, "", location.pathname);
  form.elements.code.value = code;
  form.requestSubmit();
}
