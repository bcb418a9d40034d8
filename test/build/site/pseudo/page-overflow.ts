/**
 * Runs in a page: what is wider than the window; what is cut off in a button, a label, a heading or a cell of a table's
 * head; and words of a drawing that run out of it.
 */
export function pageOverflow(): string[] {
  const WORDS = "button, label, summary, legend, a, h1, h2, h3, h4, th, dt, dd";
  const found: string[] = [];
  const tell = (element: Element, size: number, room: number): void => {
    const classes = [...element.classList].map((one) => `.${one}`).join("");
    const text = element.textContent!.trim().slice(0, 60);
    found.push(`${element.tagName.toLowerCase()}${classes} "${text}": ${Math.round(size)} > ${Math.round(room)}`);
  };
  const { scrollWidth } = document.documentElement;
  if (scrollWidth > innerWidth) {
    found.push(`the page: ${scrollWidth} > ${innerWidth}`);
    const wide = [...document.body.querySelectorAll("*")].filter(
      (one) => one.getBoundingClientRect().right > innerWidth + 1,
    );
    for (const one of wide.slice(0, 5)) tell(one, one.getBoundingClientRect().right, innerWidth);
  }
  for (const one of document.querySelectorAll<HTMLElement>(WORDS)) {
    const { overflowX, textOverflow, display, position } = getComputedStyle(one);
    if (!one.checkVisibility() || display === "inline" || position === "absolute") continue;
    // A running title, whole elsewhere.
    if (textOverflow === "ellipsis") continue;
    if (one.scrollWidth > one.clientWidth + 1 && overflowX !== "auto") tell(one, one.scrollWidth, one.clientWidth);
    if (one.scrollHeight > one.clientHeight + 4 && overflowX === "hidden")
      tell(one, one.scrollHeight, one.clientHeight);
  }
  for (const words of document.querySelectorAll<SVGTextElement>("svg text")) {
    if (!words.checkVisibility()) continue;
    const [own, whole] = [words, words.ownerSVGElement!].map((one) => one.getBoundingClientRect()) as [
      DOMRect,
      DOMRect,
    ];
    const out = Math.max(
      whole.left - own.left,
      own.right - whole.right,
      whole.top - own.top,
      own.bottom - whole.bottom,
    );
    if (own.width > 0 && out > 1) tell(words, whole.width + out, whole.width);
  }
  return found;
}
