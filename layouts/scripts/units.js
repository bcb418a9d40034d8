// Keeps the reader's choice of units from page to page.
const KEY = "leaflight-units";
const radios = document.querySelectorAll('input[name="units"]');
try {
  const kept = localStorage.getItem(KEY);
  for (const radio of radios) if (radio.value === kept) radio.checked = true;
} catch { /* storage may be closed: the kit's own units stay */ }
for (const radio of radios) {
  radio.addEventListener("change", () => {
    try {
      localStorage.setItem(KEY, radio.value);
    } catch { /* nothing to keep it in */ }
  });
}
