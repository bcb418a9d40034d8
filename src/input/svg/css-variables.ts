import { MOST_VALUE } from "./picture-bounds.ts";

/** Variables of an element and of those around it. Source: CSS Custom Properties 1. */
export class CssVariables {
  static readonly NONE = new CssVariables(new Map());

  readonly #values: ReadonlyMap<string, string>;

  private constructor(values: ReadonlyMap<string, string>) {
    this.#values = values;
  }

  /** The variables inside an element that declares these properties. */
  within(declared: ReadonlyMap<string, { readonly value: string }>): CssVariables {
    const own = [...declared].filter(([property]) => property.startsWith("--"));
    if (own.length === 0) return this;
    const values = new Map(this.#values);
    for (const [property, { value }] of own) {
      const replaced = this.replaceIn(value);
      if (replaced === undefined) values.delete(property);
      else values.set(property, replaced);
    }
    return new CssVariables(values);
  }

  /** A value with its variables replaced; undefined where one has no value, or all of it is too long. */
  replaceIn(value: string): string | undefined {
    let text = value;
    for (let rounds = 0; /\bvar\(/i.test(text); rounds += 1) {
      // The innermost first, so that no bracket stands in what is read.
      const [whole, name, fallback] = /\bvar\(\s*(--[^\s,()]+)\s*(?:,((?:[^()]|\([^()]*\))*))?\)/i.exec(text) ?? [];
      const put = name === undefined ? undefined : (this.#values.get(name) ?? fallback?.trim());
      if (whole === undefined || put === undefined || rounds >= 20) return undefined;
      text = text.replace(whole, () => put);
      if (text.length > MOST_VALUE) return undefined;
    }
    return text;
  }
}
