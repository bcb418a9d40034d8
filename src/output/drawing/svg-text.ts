import { toDecimals } from "../../core/units/length.ts";
import { escapeXml } from "../xml.ts";

/** Small helpers to write SVG as text. Numbers are millimetres, kept to 0.01 unless said otherwise. */

export function num(value: number, decimals = 2): string {
  return String(toDecimals(value, decimals));
}

/** Attributes in the order given; undefined ones are left out, numbers are written with `num`. */
export function tag(
  name: string,
  attributes: Readonly<Record<string, string | number | undefined>>,
  content = "",
): string {
  let written = "";
  for (const key of Object.keys(attributes)) {
    const value = attributes[key];
    if (value !== undefined) written += ` ${key}="${typeof value === "number" ? num(value) : escapeXml(value)}"`;
  }
  return content === "" ? `<${name}${written}/>` : `<${name}${written}>${content}</${name}>`;
}

export function text(
  x: number,
  y: number,
  content: string,
  attributes: Readonly<Record<string, string | number | undefined>> = {},
): string {
  return tag("text", { x, y, ...attributes }, escapeXml(content));
}
