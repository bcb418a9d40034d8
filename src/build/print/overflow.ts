/**
 * Runs in the page under print media: names every box whose content is larger than itself, because Chromium would shrink
 * the whole document to fit, and a true-scale sheet would come out small. Empty when all is well.
 */
export function findOverflow(): string[] {
  const problems: string[] = [];
  const name = (element: Element): string =>
    `${element.tagName.toLowerCase()}${element.id ? `#${element.id}` : ""}${element.classList.length > 0 ? `.${[...element.classList].join(".")}` : ""}`;
  const root = document.documentElement;
  if (root.scrollWidth > root.clientWidth)
    problems.push(`the page is ${root.scrollWidth} px wide in ${root.clientWidth} px`);
  for (const box of document.querySelectorAll<HTMLElement>("[data-sheet], [data-flow]")) {
    const heading = box.querySelector("h1, h2, h3")?.textContent?.trim() ?? "";
    if (box.scrollWidth > box.clientWidth)
      problems.push(`${name(box)} "${heading}" is ${box.scrollWidth} px wide in ${box.clientWidth} px`);
    if (box.hasAttribute("data-sheet") && box.scrollHeight > box.clientHeight)
      problems.push(`${name(box)} "${heading}" is ${box.scrollHeight} px high in ${box.clientHeight} px`);
  }
  for (const cell of document.querySelectorAll<HTMLElement>("[data-sheet] .mark, [data-sheet] td")) {
    if (cell.scrollWidth > cell.clientWidth)
      problems.push(
        `${name(cell)} "${cell.textContent?.trim() ?? ""}" is ${cell.scrollWidth} px wide in ${cell.clientWidth} px`,
      );
  }
  return problems;
}
