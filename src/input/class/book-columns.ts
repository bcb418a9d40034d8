import * as say from "../../words/messages.ts";
import { KitError, type KitMessage } from "../files/message.ts";
import { nearestName } from "../files/nearest-name.ts";
import { tableError } from "../tables/table-error.ts";
import { cellName, type TableRow } from "../tables/table-row.ts";
import { isPersonKey, personAdvice } from "./person-keys.ts";
import { BOOK_COLUMNS } from "./schema-seat.ts";

const COLUMNS: readonly string[] = Object.keys(BOOK_COLUMNS);

/**
 * The columns of a books table, by its head row: names in any capitals, with spaces or without (`Leaf height`). A column
 * without a name is "". @throws KitError with everything wrong in the head row
 */
export function columnsOf(file: string, head: TableRow | undefined): string[] {
  const all = COLUMNS.join(", ");
  if (!head) throw tableError(file, 1, say.frontTableEmpty(), say.frontTableHead({ columns: all }));
  const names = head.cells.map(columnCalled);
  const wrong = head.cells.flatMap((cell, i): KitMessage[] => {
    const place = { file, line: head.line, column: i + 1, field: headField(i + 1, head) };
    const name = names[i]!;
    if (isPersonKey(cell)) return [{ ...place, ...personAdvice(say.frontColumnUnknown({ column: cell })) }];
    if (name === undefined) return [{ ...place, ...unknownAdvice(cell, all) }];
    if (name === "" || names.indexOf(name) === i) return [];
    const given = say.frontColumnTwice({ column: name });
    return [{ ...place, given, allowed: say.frontColumnOnce(), remedy: say.frontCorrectTable() }];
  });
  if (wrong.length > 0) throw new KitError(wrong);
  if (names.includes("seat")) return names as string[];
  throw tableError(file, head.line, say.frontColumnMissing(), say.frontColumns({ columns: all }));
}

function headField(column: number, { row }: TableRow): string {
  return say.frontCellField({ column: say.checkFieldBooks(), cell: cellName(column, row) });
}

function unknownAdvice(cell: string, columns: string): Pick<KitMessage, "given" | "allowed" | "remedy"> {
  const nearest = nearestName(bare(cell), COLUMNS.map(bare));
  return {
    given: say.frontColumnUnknown({ column: cell }),
    allowed: say.frontColumns({ columns }),
    remedy: nearest === undefined ? say.frontCorrectTable() : say.checkWriteKey({ key: columnCalled(nearest)! }),
  };
}

/** The column that a cell of the head row names. */
function columnCalled(cell: string): string | undefined {
  return cell === "" ? "" : COLUMNS.find((name) => bare(name) === bare(cell));
}

/** A name without its capitals, spaces, hyphens and underscores. */
function bare(name: string): string {
  return name.toLowerCase().replace(/[\s_\-.]+/g, "");
}
