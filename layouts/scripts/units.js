// Keeps the reader's choice of units from page to page.
const KEY = "leaflight-units";
const radios = document.querySelectorAll('input[name="units"]');
// The address states the units that it was written in; they hold for this page alone.
const stated = new URLSearchParams(location.search).get("units");
try {
  const kept = ["mm", "in"].includes(stated) ? stated : localStorage.getItem(KEY);
  for (const radio of radios) if (radio.value === kept) radio.checked = true;
} catch { /* storage may be closed: the kit's own units stay */ }
for (const radio of radios) {
  radio.addEventListener("change", () => {
    try {
      localStorage.setItem(KEY, radio.value);
    } catch { /* nothing to keep it in */ }
  });
}
