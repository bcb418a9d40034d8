import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import type { KitClass } from "../../core/class/kit-class.ts";
import type { Kit } from "../../core/kit/kit.ts";
import { Problem } from "../../core/problem.ts";
import { atPlace } from "../files/at-place.ts";
import { openFolder, readFolders } from "../files/folders.ts";
import { type FrontMatterFile, readFrontMatter } from "../files/front-matter.ts";
import { KitError } from "../files/message.ts";
import { schemaMessages } from "../files/schema-messages.ts";
import { sheetsOf } from "../kit/resolve.ts";
import { readBooks } from "./read-books.ts";
import { type ClassMatter, classJsonSchema, classMatter } from "./schema.ts";
import { kitNamed, seatsOf } from "./seats.ts";
import { stockOf } from "./stock.ts";

/**
 * Reads every folder under `root` (…/classes). `kits` are the site's kits, which classes name.
 * @throws KitError with the messages of all classes that cannot be held as they are stated.
 */
export function readClasses(root: string, base: string, kits: readonly Kit[]): KitClass[] {
  const classes = readFolders(root, (folder) => readClass(folder, base, kits));
  return classes.sort((a, b) => a.date.localeCompare(b.date) || a.title.localeCompare(b.title, "en"));
}

/** @throws KitError with one message for each thing wrong. */
export function readClass(folder: string, base: string, kits: readonly Kit[]): KitClass {
  const holds = "a class folder holds index.md, and a books table where one is named";
  const { slug, file } = openFolder(folder, base, "class", holds);
  const front = readFrontMatter(file, readFileSync(join(folder, "index.md"), "utf8"));
  const parsed = classMatter.safeParse(front.value);
  if (!parsed.success) throw new KitError(schemaMessages(file, front, parsed.error.issues, classJsonSchema()));
  return atPlace(file, front, () => toClass(slug, folder, base, parsed.data, front, kits));
}

function toClass(
  slug: string,
  folder: string,
  base: string,
  data: ClassMatter,
  front: FrontMatterFile,
  all: readonly Kit[],
): KitClass {
  const kits = data.kits.map((name, i) => kitNamed(name, all, `kits.${i}`));
  checkDays(data);
  const table = data.books === undefined ? undefined : tableOf(folder, data.books);
  const tableFile = table && relative(base, table).split(sep).join("/");
  const rows = table && tableFile ? readBooks(tableFile, decode(readFileSync(table))) : [];
  return {
    slug,
    title: data.title,
    summary: data.summary ?? "",
    date: data.date,
    place: data.place,
    units: data.units,
    paper: data.paper,
    kits,
    seats: seatsOf(data, rows, tableFile ?? "", kits),
    sessions: data.sessions.map((session, i) => ({
      title: session.title ?? (data.sessions.length === 1 ? "The session" : `Session ${i + 1}`),
      date: session.date ?? (i === 0 ? data.date : undefined),
      starts: session.starts,
      minutes: session.minutes,
      aside: session.aside,
    })),
    ready: data.ready,
    fittingShare: data.fittingShare,
    sheets: sheetsOf(data.sheets, data.units),
    waste: data.waste,
    prices: data.prices,
    currency: data.currency ?? "",
    stock: data.stock.map(stockOf),
    bring: data.bring,
    body: front.body,
  };
}

/** @throws Problem where a session stands before the one that it follows. */
function checkDays(data: ClassMatter): void {
  let before = data.date;
  for (const [i, { date }] of data.sessions.entries()) {
    if (date === undefined) continue;
    if (date < before)
      throw new Problem(`sessions.${i}.date`, {
        given: `given ${date}`,
        allowed: `${before} or later, as the sessions follow each other`,
        remedy: "correct the day, or put the sessions in order",
      });
    before = date;
  }
}

/** Spreadsheets save Unicode text also as UTF-16 with a byte order mark. */
function decode(bytes: Buffer): string {
  return bytes[0] === 0xff && bytes[1] === 0xfe ? bytes.toString("utf16le") : bytes.toString("utf8");
}

function tableOf(folder: string, name: string): string {
  const path = join(folder, name);
  const tables = readdirSync(folder).filter((entry) => entry.endsWith(".csv"));
  if (!name.includes("/") && !name.includes("\\") && existsSync(path)) return path;
  throw new Problem("books", {
    given: `"${name}" is not there`,
    allowed: `a CSV file beside index.md${tables.length > 0 ? ` (there is ${tables.join(", ")})` : ""}`,
    remedy: "correct the name or add the file",
  });
}
