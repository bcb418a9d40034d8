import type { Seat } from "../../../core/class/kit-class.ts";
import { ROW_COLUMNS } from "../../../core/class/seat-row.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import { OF_A_BOOK } from "../../../core/refit/refit.ts";
import { columnsOf } from "../../../input/class/book-columns.ts";
import { classData } from "../../../input/class/class-data.ts";
import type { ClassMatter } from "../../../input/class/schema.ts";
import { BOOK_COLUMNS } from "../../../input/class/schema-seat.ts";
import { cellText, columnOfPath, keyOfColumn, pathOfColumn, type SeatKey } from "../../../input/class/seat-cells.ts";
import { areLines, namedRow } from "../../../input/class/seat-lines.ts";
import { seatsOf } from "../../../input/class/seats.ts";
import { type SeatMatter, tableSeats } from "../../../input/class/table-seats.ts";
import { takesFrom, withTaken } from "../../../input/class/take-over.ts";
import { isYamlMap, valueIn, type YamlValue } from "../../../input/desk/yaml-value.ts";
import { readFrontMatter } from "../../../input/files/front-matter.ts";
import { KitError, type KitMessage } from "../../../input/files/message.ts";
import { ProblemError } from "../../../input/files/problem.ts";
import type { YamlFile } from "../../../input/files/yaml.ts";
import { readDelimited } from "../../../input/tables/delimited.ts";
import type { TableRow } from "../../../input/tables/table-row.ts";
import * as say from "../../../words/messages.ts";

/** What a class's seats are read from. */
export interface ClassTexts {
  /** Its index.md. */
  readonly file: string;
  readonly text: string;
  /** The table that it names, where that is a text. */
  readonly table: { readonly file: string; readonly text: string } | undefined;
  /** The front matter of the class that it takes over from. */
  readonly taken: unknown;
  /** The kits of the site. */
  readonly kits: readonly Kit[];
}

/** A seat as a row of texts, as its file has them, and what the reader of classes makes of it. */
export interface GridRow {
  /** Undefined where none can be read. */
  readonly number: number | undefined;
  /** By columns of a books table; a column that is not there is empty. */
  readonly cells: Readonly<Record<string, string>>;
  /** Its place among the rows of the table, and among the seats of the front matter, from 0; in neither is a seat of `places`. */
  readonly inTable: number | undefined;
  readonly inMatter: number | undefined;
  /** Keys that the front matter states for it. */
  readonly own: readonly SeatKey[];
  /** What is wrong, by columns. */
  readonly wrong: Readonly<Record<string, readonly KitMessage[]>>;
  /** The seat with its book; undefined where that is to come, or something is wrong. */
  readonly seat: Seat | undefined;
}

/** A class's seats as a grid. */
export interface SeatGrid {
  readonly rows: readonly GridRow[];
  /** Columns of the table, in its own order; undefined without one, and where its rows have no head. */
  readonly columns: readonly string[] | undefined;
  /** Rows of the table, its head included; and seats of the front matter. */
  readonly tableRows: number;
  readonly matterSeats: number;
  /** Undefined where the front matter cannot be read. */
  readonly data: ClassMatter | undefined;
  readonly kits: readonly Kit[];
  /** What is wrong beside cells. */
  readonly messages: readonly KitMessage[];
}

/** Columns that every grid shows; a kit where the class has several. */
const SHOWN: readonly string[] = ["seat", "kit", ...OF_A_BOOK];

/** The columns that a grid shows: those of every book, and others that a seat has something in; or all there are. */
export function shownColumns({ rows, kits }: SeatGrid, isAll: boolean): string[] {
  const isUsed = (column: string): boolean => rows.some(({ cells }) => (cells[column] ?? "") !== "");
  return Object.keys(BOOK_COLUMNS).filter((column) => {
    if (column === "kit") return kits.length > 1 || isUsed(column);
    return isAll || SHOWN.includes(column) || isUsed(column);
  });
}

/** Reads the seats of a class from its texts, by the reader of classes; what is wrong stands at its cell. */
export function readGrid(texts: ClassTexts): SeatGrid {
  const messages: KitMessage[] = [];
  const wrongIn = new Map<string, KitMessage[]>();
  const yaml = told(messages, () => readFrontMatter(texts.file, texts.text));
  const value = yaml && (takesFrom(yaml.value) === undefined ? yaml.value : withTaken(yaml.value, texts.taken));
  const stated = listIn(value as YamlValue | undefined, "seats");
  const data = yaml && dataOf(texts.file, { ...yaml, value }, stated, { messages, wrongIn });
  const kits = (data?.kits ?? []).flatMap((slug) => texts.kits.find((kit) => kit.slug === slug) ?? []);
  const table = texts.table && tableOf(texts.table, kits, messages);
  const found = new Map<string, Found>();
  for (let n = 1; n <= (data?.places ?? 0); n += 1)
    found.set(String(n), { number: n, table: undefined, matter: undefined });
  for (const row of table?.rows ?? []) put(found, row.number, "table", row);
  for (const [i, seat] of stated.entries()) put(found, numberOf(valueIn(seat, ["seat"])), "matter", { place: i, seat });
  const rows = [...found.values()].map((one) => rowOf(one, { data, kits, wrongIn, file: texts.file }));
  return {
    rows: twiceTold(rows.toSorted((a, b) => placeOf(a) - placeOf(b))),
    columns: table?.columns,
    tableRows: table?.count ?? 0,
    matterSeats: stated.length,
    data,
    kits,
    messages,
  };
}

/** Rows without a number come last. */
function placeOf({ number }: GridRow): number {
  return number ?? Number.MAX_SAFE_INTEGER;
}

/** What a seat is stated by. */
interface Found {
  readonly number: number | undefined;
  readonly table: InTable | undefined;
  readonly matter: { readonly place: number; readonly seat: YamlValue } | undefined;
}

/** A row of the table. */
interface InTable {
  readonly place: number;
  readonly number: number | undefined;
  readonly cells: Readonly<Record<string, string>>;
  readonly matter: SeatMatter | undefined;
  readonly wrong: readonly (readonly [column: string, message: KitMessage])[];
}

/** A second row of one number is a row of its own, which is told. */
function put<K extends "table" | "matter">(
  found: Map<string, Found>,
  number: number | undefined,
  where: K,
  what: NonNullable<Found[K]>,
): void {
  const known = number === undefined ? undefined : found.get(String(number));
  const key = number === undefined || known?.[where] ? `${where} ${found.size}` : String(number);
  found.set(key, { number, table: undefined, matter: undefined, ...(known?.[where] ? {} : known), [where]: what });
}

interface Told {
  readonly messages: KitMessage[];
  /** By seats of the front matter and columns: `3 leaves`. */
  readonly wrongIn: Map<string, KitMessage[]>;
}

/** The class without those seats that are wrong, which are told at their cells. */
function dataOf(
  file: string,
  yaml: YamlFile,
  seats: readonly YamlValue[],
  { messages, wrongIn }: Told,
): ClassMatter | undefined {
  const bad = new Set<number>();
  try {
    return classData(file, yaml);
  } catch (error) {
    if (!(error instanceof KitError)) throw error;
    for (const message of error.messages) {
      const at = /^seats\[(\d+)\]\.?(.*)$/.exec(message.field);
      if (!at) {
        messages.push(message);
        continue;
      }
      const place = Number(at[1]) - 1;
      bad.add(place);
      add(wrongIn, `${place} ${columnOfPath(stepsOf(at[2]!))}`, message);
    }
  }
  if (messages.length > 0 || bad.size === 0) return undefined;
  const good = seats.filter((_, i) => !bad.has(i));
  return told(messages, () => classData(file, { ...yaml, value: { ...(yaml.value as object), seats: good } }));
}

/** `fit.borderLeaves[2]` as steps. */
function stepsOf(field: string): (string | number)[] {
  return field.split(".").flatMap((step) => {
    const place = /^(.*)\[(\d+)\]$/.exec(step);
    return place ? [place[1]!, Number(place[2]) - 1] : [step];
  });
}

/** The rows of the table; where its head cannot be read, none. */
function tableOf(
  { file, text }: NonNullable<ClassTexts["table"]>,
  kits: readonly Kit[],
  messages: KitMessage[],
):
  | { readonly rows: readonly InTable[]; readonly columns: readonly string[] | undefined; readonly count: number }
  | undefined {
  return told(messages, () => {
    const all = readDelimited(file, text);
    const lines = areLines(all);
    const columns = lines ? ROW_COLUMNS : columnsOf(file, all[0]);
    const head = lines ? [] : all.slice(0, 1);
    const rows = all
      .slice(head.length)
      .map((row, i) => inTable(file, { row, place: i + head.length, head, columns }, kits));
    return { rows, columns: lines ? undefined : columns, count: all.length };
  });
}

interface RowAt {
  readonly row: TableRow;
  readonly place: number;
  readonly head: readonly TableRow[];
  readonly columns: readonly string[];
}

function inTable(file: string, { row, place, head, columns }: RowAt, kits: readonly Kit[]): InTable {
  const named = namedRow(row, columns);
  const cells = Object.fromEntries(
    named.columns.flatMap((name, i) => (name === "" ? [] : [[name, named.cells[i] ?? ""]])),
  );
  const wrong: [string, KitMessage][] = [];
  let matter: SeatMatter | undefined;
  try {
    [matter] = tableSeats(file, [...head, row], kits).values();
  } catch (error) {
    if (!(error instanceof KitError)) throw error;
    for (const message of error.messages) wrong.push([named.columns[(message.column ?? 1) - 1] || "seat", message]);
  }
  return { place, number: numberOf(cells["seat"]), cells, matter, wrong };
}

function rowOf(
  { number, table, matter }: Found,
  {
    data,
    kits,
    wrongIn,
    file,
  }: {
    readonly data: ClassMatter | undefined;
    readonly kits: readonly Kit[];
    readonly wrongIn: Told["wrongIn"];
    readonly file: string;
  },
): GridRow {
  const own = Object.keys(isYamlMap(matter?.seat) ? matter.seat : {}) as SeatKey[];
  const stated = Object.keys(BOOK_COLUMNS)
    .filter((column) => own.includes(keyOfColumn(column)))
    .map((column) => [column, cellText(column, valueIn(matter!.seat, pathOfColumn(column)))]);
  const cells = {
    ...(number === undefined ? {} : { seat: String(number) }),
    ...table?.cells,
    ...Object.fromEntries(stated),
  };
  const wrong = new Map<string, KitMessage[]>();
  for (const [column, message] of table?.wrong ?? []) add(wrong, column, message);
  for (const column of Object.keys(BOOK_COLUMNS))
    for (const message of (matter && wrongIn.get(`${matter.place} ${column}`)) ?? []) add(wrong, column, message);
  const seat = data && wrong.size === 0 ? seatIn({ number, table, matter }, { data, kits, file, wrong }) : undefined;
  return { number, cells, inTable: table?.place, inMatter: matter?.place, own, wrong: Object.fromEntries(wrong), seat };
}

/** The seat that front matter and table state together. */
function seatIn(
  { number, table, matter }: Found,
  {
    data,
    kits,
    file,
    wrong,
  }: {
    readonly data: ClassMatter;
    readonly kits: readonly Kit[];
    readonly file: string;
    readonly wrong: Map<string, KitMessage[]>;
  },
): Seat | undefined {
  if (number === undefined) return undefined;
  const own = data.seats.filter(({ seat }) => seat === number).slice(0, 1);
  const { places, ...rest } = data;
  const seats = { file, seats: new Map(table?.matter ? [[number, table.matter]] : []) };
  if (matter === undefined && table === undefined) return undefined;
  try {
    return seatsOf({ ...rest, seats: own } as ClassMatter, seats, kits).seats[0];
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    for (const { at, ...advice } of error.problems) {
      const path = "line" in at ? [] : at.slice(at[0] === "seats" ? 2 : 1);
      const column = columnOfPath(path.length > 0 ? path : ["seat"]);
      add(wrong, column === "book" ? "leafHeight" : column, {
        file,
        line: undefined,
        column: undefined,
        field: column,
        ...advice,
      });
    }
    return undefined;
  }
}

function listIn(value: YamlValue | undefined, key: string): readonly YamlValue[] {
  const list = valueIn(value, [key]);
  return Array.isArray(list) ? list : [];
}

function numberOf(given: unknown): number | undefined {
  const number = typeof given === "string" && /^\d+$/.test(given) ? Number(given) : given;
  return typeof number === "number" && Number.isInteger(number) && number > 0 ? number : undefined;
}

function add(to: Map<string, KitMessage[]>, key: string, message: KitMessage): void {
  to.set(key, [...(to.get(key) ?? []), message]);
}

/** What is read; undefined where it cannot be, which is told. */
function told<T>(messages: KitMessage[], read: () => T): T | undefined {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof KitError)) throw error;
    messages.push(...error.messages);
    return undefined;
  }
}

/** Two rows of one number, told at the second. */
function twiceTold(rows: readonly GridRow[]): GridRow[] {
  return rows.map((row, i) => {
    const { number } = row;
    if (number === undefined || rows.findIndex((one) => one.number === number) === i) return row;
    const message: KitMessage = {
      file: "",
      line: undefined,
      column: undefined,
      field: "seat",
      given: say.frontSeatTwice({ seat: number }),
      allowed: say.frontSeatOnce(),
      remedy: say.frontNumberSeats(),
    };
    return { ...row, seat: undefined, wrong: { ...row.wrong, seat: [...(row.wrong["seat"] ?? []), message] } };
  });
}
