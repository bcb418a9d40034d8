/** A new element with a class and content. */
export function make<K extends keyof HTMLElementTagNameMap>(
  name: K,
  className: string,
  ...content: (Node | string)[]
): HTMLElementTagNameMap[K] {
  const element = document.createElement(name);
  if (className) element.className = className;
  element.append(...content);
  return element;
}

/** A button that does something. */
export function button(words: string, className: string, press: () => void): HTMLButtonElement {
  const made = make("button", className, words);
  made.type = "button";
  made.addEventListener("click", press);
  return made;
}

/** A link with words. */
export function linkTo(address: string, words: string, className = ""): HTMLAnchorElement {
  const made = make("a", className, words);
  made.href = address;
  return made;
}
