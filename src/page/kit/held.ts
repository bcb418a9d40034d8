/**
 * Marks the page as that of the last book that fitted, while the panel says something else: picture and figures are dimmed,
 * and a note stands beside the links to packet and bench, which lead there, too.
 */
export function holdPage(held: boolean): void {
  document.querySelector("main")?.classList.toggle("held", held);
  for (const note of document.querySelectorAll<HTMLElement>("[data-held]")) note.hidden = !held;
}

export function isHeld(): boolean {
  return document.querySelector("main.held") !== null;
}
