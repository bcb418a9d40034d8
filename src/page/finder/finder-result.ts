/** Announces what the finder found; empty sentences are left out. */
export function sayResult(...sentences: readonly string[]): void {
  const place = document.querySelector<HTMLElement>("[data-finder-result]");
  if (!place) return;
  const said = sentences.filter((sentence) => sentence !== "");
  place.replaceChildren(
    ...said.map((sentence) => {
      const paragraph = document.createElement("p");
      paragraph.textContent = sentence;
      return paragraph;
    }),
  );
}
