/** What Nunjucks tells a loop's body about where it is. */
interface Loop {
  readonly index: number;
  readonly first: boolean;
  readonly last: boolean;
}

const SIGNS: Readonly<Record<string, string>> = {
  "&": "&amp;",
  '"': "&quot;",
  "'": "&#39;",
  "<": "&lt;",
  ">": "&gt;",
  "\\": "&#92;",
};

/** A value as text that is safe in markup; nothing for undefined and null. The same signs as Nunjucks escapes. */
export function escaped(value: unknown): string {
  if (value === undefined || value === null) return "";
  return String(value).replace(/[&"'<>\\]/g, (sign) => SIGNS[sign]!);
}

/** Fills a loop's body for each item, or `none` where there is no item. */
export function each<T>(
  list: readonly T[] | undefined,
  body: (item: T, loop: Loop) => string,
  none: () => string = () => "",
): string {
  if (!list || list.length === 0) return none();
  let text = "";
  for (let i = 0; i < list.length; i += 1)
    text += body(list[i]!, { index: i + 1, first: i === 0, last: i === list.length - 1 });
  return text;
}
