import { existsSync, readdirSync, readFileSync } from "node:fs";
import { basename, dirname, join, relative, sep } from "node:path";

/**
 * Compares the patterns of two built sites, byte for byte: `node test/equality.ts <old dist> <new dist>`. Of every
 * pattern.json the figures count, in their order: what schema 2 calls otherwise is renamed, and texts and added keys are
 * left out. Every pattern.csv and every cut file counts whole. Prints what differs, and exits with 1 where something does.
 */

/** Keys of schema 1 and what they are since schema 2. */
const NAMES: Readonly<Record<string, string>> = { holdWidth: "tipWidth", edgeWidth: "holdWidth" };

const [before, after] = process.argv.slice(2);
if (before === undefined || after === undefined) {
  console.error("usage: node test/equality.ts <old dist> <new dist>");
  process.exit(2);
}

const files = [...new Set([...filesOf(before), ...filesOf(after)])].sort();
const differences = files.flatMap((file) => differenceOf(join(before, file), join(after, file), file));
for (const difference of differences) console.log(difference);
console.log(`${files.length} files, ${differences.length} differ`);
process.exitCode = files.length === 0 || differences.length > 0 ? 1 : 0;

/** Patterns and cut files below a folder. */
function filesOf(dist: string): string[] {
  return readdirSync(dist, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(dist, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .filter(
      (file) => ["pattern.json", "pattern.csv"].includes(basename(file)) || (/\.(svg|dxf)$/.test(file) && isCut(file)),
    );
}

function isCut(file: string): boolean {
  return dirname(file).split("/").includes("cut");
}

function differenceOf(old: string, young: string, file: string): string[] {
  if (!existsSync(old)) return [`${file}: only in the new site`];
  if (!existsSync(young)) return [`${file}: only in the old site`];
  const [one, other] = [old, young].map((path) => linesOf(path, file)) as [string[], string[]];
  const at = Array.from({ length: Math.max(one.length, other.length) }, (_, i) => i).find((i) => one[i] !== other[i]);
  if (at === undefined) return [];
  return [`${file}, line ${at + 1}:\n  old: ${shortened(one[at], other[at])}\n  new: ${shortened(other[at], one[at])}`];
}

/** A pattern's figures with a line for each, or the lines of any other file with their ends. */
function linesOf(path: string, file: string): string[] {
  const text = readFileSync(path, "utf8");
  return file.endsWith(".json") ? JSON.stringify(figuresOf(JSON.parse(text)), null, 1).split("\n") : text.split("\n");
}

/** From a little before where a line differs from another. */
function shortened(line: string | undefined, other: string | undefined): string {
  if (line === undefined) return "(ends)";
  const at = [...line].findIndex((letter, i) => letter !== other?.[i]);
  return JSON.stringify(line.slice(Math.max(0, at - 30), Math.max(0, at) + 60));
}

type Json = Readonly<Record<string, unknown>>;

interface Published {
  readonly schema: string;
  readonly fit: Json;
  readonly insert?: Json & { readonly parts: readonly (Json & { readonly marks: readonly Json[] })[] };
  readonly supplies: readonly Json[];
  readonly [key: string]: unknown;
}

/** A published pattern without its texts, and with the names of schema 2. */
function figuresOf(published: Published): Json {
  const { insert } = published;
  return {
    ...without(published, "schema", "findings", "warnings"),
    fit: published.schema === "leaflight/pattern/1" ? renamed(published.fit) : published.fit,
    ...(insert ? { insert: { ...insert, parts: insert.parts.map(partOf) } } : {}),
    supplies: published.supplies.map((supply) => without(supply, "id", "item", "unit", "note")),
  };
}

function partOf(part: Json & { readonly marks: readonly Json[] }): Json {
  return { ...without(part, "id", "kind"), marks: part.marks.map((mark) => without(mark, "label")) };
}

function renamed(fit: Json): Json {
  return Object.fromEntries(Object.entries(fit).map(([key, value]) => [NAMES[key] ?? key, value]));
}

function without(record: Json, ...keys: readonly string[]): Json {
  return Object.fromEntries(Object.entries(record).filter(([key]) => !keys.includes(key)));
}
