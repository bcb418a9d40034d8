import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { pathOf, type Scene } from "./scene.ts";
import { stylesFor } from "./styles.ts";

/** Where goldens are kept: `<room>/<name>.svg`. */
export const GOLDENS = join(import.meta.dirname, "goldens");

/** How a drawing stands to its golden. */
export interface Compared {
  readonly scene: Scene;
  /** As it is drawn now, or why it is not drawn at all. */
  readonly now: string;
  /** As it was accepted; undefined where nothing was. */
  readonly golden: string | undefined;
}

/** A scene as a file that opens by itself, an element a line. */
export function drawnText({ draw }: Scene): string {
  const svg = draw();
  return `${inLines(svg.replace(/<svg [^>]*>/, (root) => `${root}<style>${stylesFor(svg)}</style>`))}\n`;
}

/** Breaks a drawing's text between elements, never inside of words. */
function inLines(svg: string): string {
  const parts = svg.trim().split(/(<text\b.*?<\/text>|<(?:title|style)>.*?<\/(?:title|style)>)/s);
  return parts
    .flatMap((part, i) => (i % 2 === 1 ? [part] : part.split(/(?<=>)\s*(?=<)/)))
    .filter((line) => line !== "")
    .join("\n");
}

export function compared(scene: Scene, folder: string = GOLDENS): Compared {
  const file = goldenFile(scene, folder);
  const golden = existsSync(file) ? readFileSync(file, "utf8").replaceAll("\r\n", "\n") : undefined;
  return { scene, now: drawnText(scene), golden };
}

export function isChanged({ now, golden }: Compared): boolean {
  return now !== golden;
}

/** Writes what is drawn now beside a golden that differs; where they are alike, takes away what lies there from before. */
export function leaveBeside(one: Compared, folder: string = GOLDENS): void {
  const file = changedFile(one.scene, folder);
  if (isChanged(one)) write(file, one.now);
  else rmSync(file, { force: true });
}

/** Makes what is drawn now the golden. */
export function accept(one: Compared, folder: string = GOLDENS): void {
  if (isChanged(one)) write(goldenFile(one.scene, folder), one.now);
  rmSync(changedFile(one.scene, folder), { force: true });
}

/** All goldens, as `room/name`. */
export function goldenPaths(folder: string = GOLDENS): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((path) => path.endsWith(".svg") && !path.endsWith("-changed.svg"))
    .map((path) => path.replaceAll("\\", "/").slice(0, -".svg".length))
    .sort();
}

/** Goldens that no scene draws. */
export function strayGoldens(scenes: readonly Scene[], folder: string = GOLDENS): string[] {
  const known = new Set(scenes.map(pathOf));
  return goldenPaths(folder).filter((path) => !known.has(path));
}

export function goldenFile(scene: Scene, folder: string = GOLDENS): string {
  return join(folder, `${pathOf(scene)}.svg`);
}

export function changedFile(scene: Scene, folder: string = GOLDENS): string {
  return join(folder, `${pathOf(scene)}-changed.svg`);
}

function write(file: string, text: string): void {
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, text);
}
