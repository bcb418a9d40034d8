/** Runs in the page of a large table: sets it in short, with the classes and the title that the page states for that. */
export function setShort(): void {
  for (const one of document.querySelectorAll<HTMLElement>("[data-short]")) one.className = one.dataset["short"]!;
  const title = document.querySelector<HTMLElement>("[data-short-title]")!;
  title.textContent = title.dataset["shortTitle"]!;
}
