import { Document, Scalar } from "yaml";
import { isList, isYamlMap, type YamlValue } from "./yaml-value.ts";

/** Values as an author would write them into a front matter. */

/** Letters of a line up to which a list or a map is written on it. */
const LINE = 100;

/** Where a value is to stand. */
export interface ValuePlace {
  /** Between brackets or braces, where less may stand plain. */
  readonly isFlow: boolean;
  /** How the value was written that stood there; undefined where there was none. */
  readonly was?: string | undefined;
}

/** A value on one line: `8`, `"1/4 in"`, `{ name: rim, line: 2 }`. A scalar is written as the one before it was. */
export function lineText(value: YamlValue, place: ValuePlace): string {
  if (isList(value)) return `[${value.map((one) => lineText(one, { isFlow: true })).join(", ")}]`;
  if (!isYamlMap(value)) return scalarText(value, place);
  const pairs = Object.entries(value).map(([key, one]) => `${keyText(key)}: ${lineText(one, { isFlow: true })}`);
  return pairs.length === 0 ? "{}" : `{ ${pairs.join(", ")} }`;
}

/** A key, or a scalar that is none. */
export function keyText(key: string): string {
  return scalarText(key, { isFlow: true });
}

function scalarText(value: string | number | boolean | null, { isFlow, was }: ValuePlace): string {
  if (typeof value === "number" && was !== undefined) return withDecimals(value, was);
  const scalar = new Scalar(value);
  const quote = was?.[0];
  if (typeof value === "string" && quote === '"') scalar.type = "QUOTE_DOUBLE";
  if (typeof value === "string" && quote === "'") scalar.type = "QUOTE_SINGLE";
  if (typeof value === "string" && /[\r\n]/.test(value)) scalar.type = "QUOTE_DOUBLE";
  return asPackage(scalar, isFlow);
}

/** As the package writes it: plain where that is read back as the same, in quotes otherwise. */
function asPackage(scalar: Scalar, isFlow: boolean): string {
  const document = new Document([scalar], { version: "1.2", schema: "core" });
  if (!isFlow) return document.toString({ lineWidth: 0 }).replace(/^- /, "").trimEnd();
  (document.contents as { flow?: boolean }).flow = true;
  return document.toString({ lineWidth: 0, flowCollectionPadding: false }).trim().slice(1, -1);
}

/** A number with as many decimals as the one before it where that ended with 0: `10.0`, `2.50`. */
function withDecimals(value: number, was: string): string {
  const text = Object.is(value, -0) ? "0" : String(value);
  const padded = /^[-+]?\d+\.(\d*0)$/.exec(was)?.[1]?.length ?? 0;
  if (padded === 0 || !/^-?\d+(\.\d+)?$/.test(text)) return text;
  const decimals = text.split(".")[1]?.length ?? 0;
  return decimals >= padded ? text : value.toFixed(padded);
}

/** How a value is written after `before` (a key with its colon, or a dash): the lines of all, indented by so many spaces. */
export function blockLines(before: string, value: YamlValue, indent: number): string[] {
  const margin = " ".repeat(indent);
  const line = `${margin}${before} ${lineText(value, { isFlow: false })}`;
  const isOfMaps = isList(value) && value.some(isYamlMap);
  const isLong = isOfMaps || (line.length > LINE && (isList(value) || isYamlMap(value)));
  if (!isLong) return [line];
  const inside = isList(value)
    ? value.flatMap((one) => blockLines("-", one, indent + 2))
    : Object.entries(value as Record<string, YamlValue>).flatMap(([key, one]) =>
        blockLines(`${keyText(key)}:`, one, indent + 2),
      );
  if (before !== "-") return [`${margin}${before}`, ...inside];
  const [first, ...rest] = inside;
  return [`${margin}- ${first!.trimStart()}`, ...rest];
}
