/** A text that a person meets on a page, with the element it stands in. */
export interface PageText {
  readonly where: string;
  readonly text: string;
}

/** Runs in a page: every text node and every attribute that is read out, shown or listed elsewhere, hidden ones included. */
export function pageTexts(): PageText[] {
  const SAID = [
    "alt",
    "title",
    "aria-label",
    "aria-description",
    "aria-valuetext",
    "placeholder",
    "label",
    "data-label",
  ];
  const UNSAID = "script, style, noscript, code";
  const METAS =
    'meta[name="description"], meta[property^="og:"], meta[name^="twitter:"], meta[name="application-name"]';
  const name = (element: Element): string =>
    `${element.tagName.toLowerCase()}${element.id ? `#${element.id}` : ""}${[...element.classList].map((one) => `.${one}`).join("")}`;
  const found: PageText[] = [];
  // A sentence may run through links, strong words and lines of a drawing's text.
  const INLINE = "a, abbr, b, em, i, span, strong, time, tspan";
  const whole = (element: Element): Element => (element.matches(INLINE) ? whole(element.parentElement!) : element);
  const sentences = new Map<Element, string>();
  const walk = document.createTreeWalker(document.documentElement, NodeFilter.SHOW_TEXT);
  for (let node = walk.nextNode(); node; node = walk.nextNode()) {
    const parent = node.parentElement!;
    if (parent.closest(UNSAID)) continue;
    const sentence = whole(parent);
    sentences.set(sentence, `${sentences.get(sentence) ?? ""}${node.textContent} `);
  }
  for (const [element, text] of sentences) found.push({ where: name(element), text });
  for (const element of document.querySelectorAll("*"))
    for (const attribute of SAID) {
      const text = element.getAttribute(attribute);
      if (text) found.push({ where: `${name(element)}[${attribute}]`, text });
    }
  for (const meta of document.querySelectorAll(METAS)) {
    const kind = meta.getAttribute("name") ?? meta.getAttribute("property")!;
    if (!/:(type|url|image|card|locale)$|image:(width|height|type)$/.test(kind))
      found.push({ where: `meta ${kind}`, text: meta.getAttribute("content")! });
  }
  return found;
}

/** Runs in a page: what is wider than the window, or cut off in a button, a label or a heading. */
export function pageOverflow(): string[] {
  const told = (element: Element, wide: number, room: number): string =>
    `${element.tagName.toLowerCase()}.${[...element.classList].join(".")} "${element.textContent!.trim().slice(0, 60)}": ${wide} > ${room}`;
  const root = document.documentElement;
  const found: string[] = [];
  if (root.scrollWidth > innerWidth) {
    found.push(`page: ${root.scrollWidth} > ${innerWidth}`);
    for (const one of document.body.querySelectorAll<HTMLElement>("*")) {
      const { right, width } = one.getBoundingClientRect();
      if (width > 0 && right > innerWidth + 1 && found.length < 6)
        found.push(`  ${told(one, Math.round(right), innerWidth)}`);
    }
  }
  for (const one of document.querySelectorAll<HTMLElement>(
    "button, label, summary, legend, a, h1, h2, h3, th, dt, dd",
  )) {
    if (!one.checkVisibility()) continue;
    const { overflowX, display, position } = getComputedStyle(one);
    if (display === "inline" || position === "absolute") continue;
    if (one.scrollWidth > one.clientWidth + 1 && overflowX !== "auto")
      found.push(told(one, one.scrollWidth, one.clientWidth));
    if (one.scrollHeight > one.clientHeight + 4 && overflowX === "hidden")
      found.push(`high ${told(one, one.scrollHeight, one.clientHeight)}`);
  }
  return found;
}
