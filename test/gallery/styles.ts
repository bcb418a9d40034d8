import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type CssNode, generate, parse, toPlainObject } from "css-tree/dist/csstree.esm";

/** Sheets that say how drawings look, in the order in which the bench's page has them. */
const SHEETS = ["base.css", "bench.css"];

/** What a drawing can be given by a rule; the rest places it on its page. */
const LOOKS = /^(fill|stroke|font|color)/;

/** One class and nothing else. */
const CLASS = /^\.([\w-]+)$/;

const rules = SHEETS.map((name) => readFileSync(join(import.meta.dirname, "../../layouts/styles", name), "utf8"))
  .flatMap((css) => toPlainObject(parse(css)).children ?? [])
  .filter(({ type }) => type === "Rule");
const variables = new Map(
  rules.filter((rule) => selectorOf(rule) === ":root").flatMap((rule) => declarationsOf(rule, /^--/)),
);

/** The page's letters, for every drawing. */
const LETTERS = `svg{${looksOf(rules.find((rule) => selectorOf(rule) === "body")!, /^font-(family|variant)/)}}`;

/** Rules of `layouts/styles` for the classes of a drawing in light colours, as text of a style element. */
export function stylesFor(svg: string): string {
  const classes = new Set([...svg.matchAll(/ class="([^"]+)"/g)].flatMap(([, names]) => names!.split(" ")));
  const own = rules.flatMap((rule) => {
    const name = CLASS.exec(selectorOf(rule))?.[1];
    const looks = name !== undefined && classes.has(name) ? looksOf(rule, LOOKS) : "";
    return looks === "" ? [] : [`.${name}{${looks}}`];
  });
  return [LETTERS, ...own].join("\n");
}

function looksOf(rule: CssNode, wanted: RegExp): string {
  return declarationsOf(rule, wanted)
    .map(
      ([name, value]) => `${name}:${value.replaceAll(/var\((--[\w-]+)\)/g, (_, variable) => variables.get(variable)!)}`,
    )
    .join(";");
}

function selectorOf({ prelude }: CssNode): string {
  return prelude ? generate(prelude) : "";
}

function declarationsOf({ block }: CssNode, wanted: RegExp): [name: string, value: string][] {
  return (block?.children ?? []).flatMap(({ property, value }): [string, string][] =>
    property !== undefined && wanted.test(property) && typeof value === "object"
      ? [[property, generate(value).trim()]]
      : [],
  );
}
