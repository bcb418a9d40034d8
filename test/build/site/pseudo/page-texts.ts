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
