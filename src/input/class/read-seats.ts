import type { Kit } from "../../core/kit/kit.ts";
import * as say from "../../words/messages.ts";
import { toldOfFile } from "../files/file-message.ts";
import { problem } from "../files/problem.ts";
import { entriesIn } from "../files/read-file.ts";
import { nameList } from "../files/short.ts";
import type { SiteFile } from "../files/site-file.ts";
import { readTable, TABLE_ENDINGS } from "../tables/read-table.ts";
import type { ClassMatter } from "./schema.ts";
import { type Seats, type SeatsTable, seatsOf } from "./seats.ts";
import { tableSeats } from "./table-seats.ts";

/** A closed class needs neither seats nor their table any more. */
const NO_SEATS: Seats = { seats: [], awaiting: [] };

/**
 * The seats of a class whose folder is `home` in the project `base`, from front matter and books table.
 * @throws ProblemError, and KitError for the table
 */
export function readSeats(home: string, base: string, data: ClassMatter, kits: readonly Kit[]): Seats {
  if (data.state === "closed") return NO_SEATS;
  return seatsOf(data, data.books === undefined ? NO_TABLE : booksTable(tableFile(home, base, data.books), kits), kits);
}

const NO_TABLE: SeatsTable = { file: "", seats: new Map() };

function booksTable(source: SiteFile, kits: readonly Kit[]): SeatsTable {
  return { file: source.file, seats: tableSeats(source.file, readTable(source), kits) };
}

/** The table beside index.md. @throws ProblemError where it is not there; KitError where its folder cannot be read */
function tableFile(home: string, base: string, name: string): SiteFile {
  const entries = toldOfFile(() => entriesIn(base, home)).map((entry) => entry.name);
  // Some disks keep an accent apart from its letter.
  const found = entries.find((entry) => entry.normalize() === name.normalize());
  if (found !== undefined) return { base, file: `${home}/${found}`, home, kind: "table" };
  const tables = entries.filter((entry) => TABLE_ENDINGS.some((ending) => entry.toLowerCase().endsWith(ending)));
  const allowed = tables.length > 0 ? say.frontTableAmong({ files: nameList(tables) }) : say.frontTableBeside();
  throw problem(["books"], { given: say.frontFileMissing({ file: name }), allowed, remedy: say.frontAddFile() });
}
