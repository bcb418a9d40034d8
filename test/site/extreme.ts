import { readFileSync } from "node:fs";
import { join } from "node:path";
import { stringify } from "yaml";
import { fixtureFolder, fixtureFrontMatter } from "../input/kit/kit-folders.ts";
import type { Project } from "./project.ts";

/** A text of exactly so many characters; neighbouring fields may be written differently. */
type Write = (length: number) => string;

const WORD: Write = (length) => "W".repeat(length);
const MIXED: readonly Write[] = [
  (length) => repeated("Wide words whose many letters make lines ", length),
  (length) => repeated("https://folds.example.org/WWWW-quay/", length),
  (length) => repeated("ШИРОКОЩЕКАЯЖЖЫЮ", length),
  (length) => repeated("ΩΜΕΓΑΛΟΓΡΑΜΜΑΤΟΣΏ", length),
];

/** Ways to fill fields to their last character: no space at all; or words, an address, and scripts whose letters are wide, in turns. */
export const WAYS = ["word", "mixed"] as const;

function writer(way: (typeof WAYS)[number]): Write {
  let turn = 0;
  if (way === "word") return WORD;
  return (length) => {
    turn += 1;
    return MIXED[turn % MIXED.length]!(length);
  };
}

function repeated(text: string, length: number): string {
  const whole = text.repeat(Math.ceil(length / text.length)).slice(0, length);
  return whole.endsWith(" ") ? `${whole.slice(0, -1)}W` : whole;
}

/** As long as texts may be, by the guide's tables of keys; written here by hand. */
const LONGEST = { title: 120, summary: 500, name: 60, line: 120, note: 300, unit: 30, currency: 12, version: 20 };

/** A kit with a light, a window and as many levels as there may be, each of its texts as long as it may be. */
function extremeMatter(written: Write): object {
  const matter = fixtureFrontMatter("harbour-moon");
  const { title, summary, name, line, note, unit, currency, version } = LONGEST;
  const numbered = (length: number, i: number): string => `${written(length - 2)}${String(i).padStart(2, "0")}`;
  const names: string[] = matter.levels.map((_: unknown, i: number) => numbered(name, i));
  const renamed = (old: string): string => names[matter.levels.findIndex((one: { name: string }) => one.name === old)]!;
  return {
    ...matter,
    title: written(title),
    summary: written(summary),
    currency: written(currency),
    versions: [
      { version: "9".repeat(version), date: "2026-05-30", note: written(note) },
      { version: "8".repeat(version), date: "2026-05-29", note: written(note) },
    ],
    licence: { name: written(name), url: "https://folds.example.org/licence" },
    links: [{ label: written(line), url: `https://${"folds.".repeat(20)}example.org/` }],
    credit: { work: written(title), source: written(note), licence: written(name) },
    picture: {
      ...matter.picture,
      levels: Object.fromEntries(Object.entries(matter.picture.levels).map(([old, ids]) => [renamed(old), ids])),
    },
    levels: matter.levels.map((one: object, i: number) => ({ ...one, name: names[i] })),
    light: { ...matter.light, in: matter.light.in && renamed(matter.light.in), cells: written(name) },
    insert: { ...matter.insert, outline: renamed(matter.insert.outline) },
    sheets: ["a4", { name: written(name), width: 300, height: 400 }],
    supplies: Array.from({ length: 4 }, (_, i) => ({
      item: numbered(line, i),
      unit: written(unit),
      quantity: 123456.75,
      price: 123456.75,
    })),
  };
}

function extremeClass(written: Write, kit: string): object {
  const { title, summary, name, line, currency } = LONGEST;
  const { book } = fixtureFrontMatter("harbour-moon");
  const sessions = [14, 21, 28].map((day) => ({ title: written(name), date: `2027-01-${day}`, minutes: 150 }));
  return {
    title: written(title),
    summary: written(summary),
    date: "2027-01-14",
    place: written(line),
    kits: [kit],
    seats: [
      { seat: 1, book },
      { seat: 200, book, pace: 5 },
      { seat: 4, book, fit: { height: 600 } },
    ],
    sessions,
    sheets: ["a4", { name: written(name), width: 300, height: 400 }],
    prices: { card: 0.35, light: 2.4 },
    currency: written(currency),
    stock: [{ item: written(line), quantity: 1_000_000 }],
    bring: [written(line), written(line)],
  };
}

/** Writes an extreme kit, and a class of it, for each way to fill fields; the classes print on both papers. */
export function writeExtremes(project: Project): void {
  const picture = fixtureFrontMatter("harbour-moon").picture.file;
  const drawn = readFileSync(join(fixtureFolder("harbour-moon"), picture), "utf8");
  for (const way of WAYS) {
    const write = writer(way);
    const kit = `extreme-${way}`;
    project.write(`content/kits/${kit}/index.md`, page(extremeMatter(write), write));
    project.write(`content/kits/${kit}/${picture}`, drawn);
    const paper = way === "word" ? "a4" : "letter";
    project.write(`content/classes/class-${way}/index.md`, page({ ...extremeClass(write, kit), paper }, write));
  }
}

function page(matter: object, write: Write): string {
  return `---\n${stringify(matter)}---\n${write(1000)}\n`;
}
