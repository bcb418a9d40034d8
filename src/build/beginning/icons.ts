import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import leven from "leven";
import { shortValue } from "../../input/files/short.ts";
import { rowText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";

/** How many icons of similar names are told. */
const MOST_NEAR = 8;

const FILLED = dirname(fileURLToPath(import.meta.resolve("@phosphor-icons/core/fill/heart-fill.svg")));

/** The drawing of an icon of the open set Phosphor Icons (MIT), as filled shapes. @throws BuildError with icons of similar names */
export function iconDrawing(name: string): string {
  const file = join(FILLED, `${name}-fill.svg`);
  if (/^[a-z0-9-]+$/.test(name) && existsSync(file)) return readFileSync(file, "utf8");
  throw new BuildError(say.newIcon({ given: shortValue(name), meant: rowText(nearIcons(name)) }));
}

/** The same as path data, in a box of 256 by 256: the icons of the set are one path each. @throws BuildError as `iconDrawing` */
export function iconPath(name: string): string {
  return [...iconDrawing(name).matchAll(/<path d="([^"]+)"/g)].map(([, data]) => data).join("");
}

/** Icons whose names hold a word, or look like it. */
export function nearIcons(word: string): string[] {
  const wanted = word.trim().toLowerCase().slice(0, 40).replaceAll(/\s+/g, "-");
  const off = (name: string): number => (name.includes(wanted) ? name.length / 100 : leven(name, wanted));
  return iconNames()
    .map((name) => ({ name, off: off(name) }))
    .toSorted((a, b) => a.off - b.off || a.name.localeCompare(b.name, "en"))
    .slice(0, MOST_NEAR)
    .map(({ name }) => name);
}

function iconNames(): string[] {
  return readdirSync(FILLED).map((file) => file.replace(/-fill\.svg$/, ""));
}
