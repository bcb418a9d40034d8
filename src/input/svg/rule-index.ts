import type { Element } from "@xmldom/xmldom";
import * as say from "../../words/messages.ts";
import { lineOf } from "./attribute.ts";
import { matches } from "./css-selector.ts";
import { MOST_TRIES } from "./picture-bounds.ts";
import { PictureLimit } from "./picture-error.ts";
import type { StyleRule } from "./style-sheet.ts";

/** The rules of a picture's style sheets, found by what an element is called. */
export class RuleIndex {
  readonly #byName = new Map<string, { readonly rule: StyleRule; readonly order: number }[]>();
  #tries = 0;

  constructor(rules: readonly StyleRule[]) {
    for (const [order, rule] of rules.entries()) {
      const name = nameOf(rule);
      const same = this.#byName.get(name);
      if (same) same.push({ rule, order });
      else this.#byName.set(name, [{ rule, order }]);
    }
  }

  /** The rules that mean an element, in their order. @throws PictureLimit where styles are beyond all use */
  rulesFor(element: Element): StyleRule[] {
    if (this.#byName.size === 0) return [];
    const classes = [...new Set((element.getAttribute("class") ?? "").split(/\s+/).filter(Boolean))];
    const names = ["*", element.localName!, `#${element.getAttribute("id") ?? ""}`, ...classes.map((one) => `.${one}`)];
    const near = names.flatMap((name) => this.#byName.get(name) ?? []);
    const step = (): void => this.#count(element);
    return near
      .filter(({ rule }) => {
        step();
        return matches(rule.selector, element, classes, step);
      })
      .sort((a, b) => a.order - b.order)
      .map(({ rule }) => rule);
  }

  #count(element: Element): void {
    this.#tries += 1;
    if (this.#tries > MOST_TRIES) throw new PictureLimit(lineOf(element), say.pictureManyStyles());
  }
}

/** What an element must be called for a rule: the rarest of what its selector names. */
function nameOf({ selector: { subject } }: StyleRule): string {
  const { type, classes, ids } = subject;
  if (ids.length > 0) return `#${ids[0]}`;
  return classes.length > 0 ? `.${classes[0]}` : (type ?? "*");
}
