import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { stringify } from "yaml";
import { fitSeats } from "../../../src/core/class/fit-seats.ts";
import { messagesOfClass, readFixtureClass, readMadeClass, smallClass } from "../../core/class/made-class.ts";
import { FIXTURES } from "../kit/kit-folders.ts";

const HEAD = "seat,kit,leafHeight,leafWidth,blockThickness,leaves,pageOneLeaf,lastPage,plates,direction";
const ROW = "1,little-gull,178,108,12.5,112,3,218,,ltr";
const fromTable = { ...smallClass(), seats: [], books: "books.csv" };

describe("readClass(folder)", () => {
  it("reads a seat's book from the front matter and from a table alike", () => {
    const seat = {
      seat: 1,
      book: { leafHeight: "17.8 cm", leafWidth: 108, blockThickness: 12.5, leaves: 112, pageOneLeaf: 3, lastPage: 218 },
    };
    const stated = readMadeClass({ ...smallClass(), seats: [seat] });
    const listed = readMadeClass(fromTable, `${HEAD}\n${ROW}\n`);
    expect(listed.seats[0]!.refit).toEqual(stated.seats[0]!.refit);
    expect(listed.seats[0]!.book).toEqual(stated.seats[0]!.book);
    expect(stated.seats[0]!.refit).toEqual({
      leafHeight: 178,
      leafWidth: 108,
      blockThickness: 12.5,
      leaves: 112,
      lastPage: 218,
    });
  });

  it("reads a table as spreadsheets write it: byte order mark, CRLF, quotes, any order of columns", () => {
    const table = `\uFEFFleaves,seat,leafWidth,leafHeight,blockThickness,plates\r\n112,4,"108","7 in",12.5,"96:2; 120:4"\r\n`;
    const [seat] = readMadeClass(fromTable, table).seats;
    expect(seat).toMatchObject({ number: 4, pace: 1 });
    expect(seat!.book.leafHeight).toBeCloseTo(177.8, 9);
    expect(seat!.book.plates).toEqual([
      { afterPage: 96, leaves: 2 },
      { afterPage: 120, leaves: 4 },
    ]);
  });

  it("reads a table whose cells are parted by semicolons, with decimal commas", () => {
    const [seat] = readMadeClass(
      fromTable,
      'seat;leafHeight;leafWidth;blockThickness;leaves;plates\n4;178;108,5;12,5 mm;112;"96:2; 120:4"\n',
    ).seats;
    expect(seat!.book).toMatchObject({ leafWidth: 108.5, blockThickness: 12.5, leaves: 112 });
    expect(seat!.book.plates).toHaveLength(2);
  });

  it("passes over empty rows and spare cells, whatever the lines end with", () => {
    const table = `${HEAD}\r\n${ROW},,\n,,,,,,,,,\r2,,178,108,12.5,112\n\n`;
    expect(readMadeClass(fromTable, table).seats.map((seat) => seat.number)).toEqual([1, 2]);
  });

  it("reads a table in UTF-16, as spreadsheets save Unicode text", () => {
    const table = Buffer.from(`\uFEFF${HEAD}\n${ROW}\n`.replaceAll(",", "\t"), "utf16le");
    expect(readMadeClass(fromTable, table).seats[0]!.book.leaves).toBe(112);
  });

  it("reads columns and words in any capitals, with spaces, and marks of inches", () => {
    const head = "Seat;KIT;Leaf height;leaf_width;Block Thickness;LEAVES;Direction;fold-style";
    const [seat] = readMadeClass(fromTable, `sep=;\n${head}\n4;Little Gull;7,5";5 ½";12,5 mm;112;LTR;Single\n`).seats;
    // 7.5 and 5.5 inches in millimetres.
    expect(seat!.book).toMatchObject({ leafHeight: 190.5, leafWidth: 139.7, blockThickness: 12.5, direction: "ltr" });
    expect(seat!.kit.slug).toBe("little-gull");
  });

  it.each(["books.xlsx", "books.ods"])(
    "reads the books of %s, a time that a spreadsheet made of plates, too",
    (name) => {
      const matter = { ...fromTable, kits: ["little-gull", "harbour-moon"], books: name };
      const { seats } = readMadeClass(matter, readFileSync(join(FIXTURES, "tables", name)), name);
      expect(seats.map(({ number, kit }) => [number, kit.slug])).toEqual([
        [1, "little-gull"],
        [2, "harbour-moon"],
        [12, "little-gull"],
      ]);
      expect(seats[0]!.book.blockThickness).toBeCloseTo(13.97, 9);
      expect(seats[1]!.book).toMatchObject({ leafHeight: 215.9, plates: [{ afterPage: 192, leaves: 4 }] });
      expect(seats[2]!.book.plates).toHaveLength(2);
    },
  );

  it("reads a seat's depths, light, opening and leaves of the picture from the table as from the front matter", () => {
    const own = { opening: 95, pictureLeaves: 80 };
    const seat = { seat: 1, book: { leafHeight: 178, leafWidth: 108, blockThickness: 12.5, leaves: 112 } };
    const stated = readMadeClass({
      ...smallClass(),
      kits: ["harbour-moon"],
      seats: [{ ...seat, fit: { ...own, depths: [12, 20, 30.5] }, light: { diameter: 30, height: "4 cm" } }],
    });
    const head =
      "seat,leafHeight,leafWidth,blockThickness,leaves,opening,picture leaves,depths,lightDiameter,light height";
    const table = `${head}\n1,178,108,12.5,112,95,80,"12; 20; 30,5",30,40 mm\n`;
    const listed = readMadeClass({ ...fromTable, kits: ["harbour-moon"] }, table);
    expect(listed.seats[0]!.refit).toEqual(stated.seats[0]!.refit);
    expect(listed.seats[0]!.refit).toMatchObject({
      openingDegrees: 95,
      pictureLeaves: 80,
      depths: [12, 20, 30.5],
      lightDiameter: 30,
      lightHeight: 40,
    });
    const [message] = messagesOfClass({ ...fromTable, kits: ["harbour-moon"] }, table.replace("40 mm", "40 spans"));
    expect(message).toMatchObject({ line: 2, column: 10, field: "lightHeight in cell J2" });
  });

  it("reads lines as the class's page writes them, without a head row, or each pasted into one cell", () => {
    const lines = "3,little-gull,178,108,12.5,112,3,218,,ltr,1.5\n1,little-gull,178,108,12.5,112,,,96x2,,\n";
    const plan = readMadeClass(fromTable, lines);
    expect(plan.seats.map(({ number, pace }) => [number, pace])).toEqual([
      [1, 1],
      [3, 1.5],
    ]);
    expect(plan.seats[0]!.book.plates).toEqual([{ afterPage: 96, leaves: 2 }]);
    const quoted = lines.replace(/^.+$/gm, '"$&"');
    expect(readMadeClass(fromTable, quoted)).toEqual(plan);
    // Below a head row of the teacher's own, in a table with semicolons.
    const mixed = `Leaves;Seat;leaf height;leaf width;block thickness\n120;2;178;108;12,5\n${lines}`;
    expect(readMadeClass(fromTable, mixed).seats.map(({ number, book }) => [number, book.leaves])).toEqual([
      [1, 112],
      [2, 120],
      [3, 112],
    ]);
    const [message] = messagesOfClass(fromTable, quoted.replace("12.5,112,3", "12.5,many,3"));
    expect(message).toMatchObject({ line: 1, field: "leaves in cell A1" });
  });

  it("lets a seat of the front matter have its book in the table, and sorts by number", () => {
    const plan = readMadeClass(
      { ...fromTable, kits: ["little-gull", "harbour-moon"], pace: 1.2, seats: [{ seat: 9, pace: 0.8 }] },
      `${HEAD}\n9,,178,108,12.5,112,3,218,,ltr\n2,harbour-moon,216,140,24,204,5,399,,rtl\n`,
    );
    expect(plan.seats.map((seat) => [seat.number, seat.kit.slug, seat.pace])).toEqual([
      [2, "harbour-moon", 1.2],
      [9, "little-gull", 0.8],
    ]);
    expect(plan.seats[0]!.refit.direction).toBe("rtl");
  });

  it("takes seats without books: places, seats with a number alone, and rows of the table", () => {
    const matter = {
      ...{ ...fromTable, kits: ["little-gull", "harbour-moon"], places: 7 },
      seats: [{ seat: 2, kit: "harbour-moon" }, { seat: 7 }],
    };
    const plan = readMadeClass(matter, `${HEAD}\n4,,178,108,12.5,112,3,218,,ltr\n5,little-gull\n`);
    expect(plan.state).toBe("collecting");
    expect(plan.seats.map(({ number }) => number)).toEqual([4]);
    expect(plan.awaiting.map(({ number, kit }) => [number, kit?.slug])).toEqual([
      [1, undefined],
      [2, "harbour-moon"],
      [3, undefined],
      [5, "little-gull"],
      [6, undefined],
      [7, undefined],
    ]);
  });

  it("refuses a seat beyond the places, wherever it is stated", () => {
    const told = "places: 5 places, and a seat 30";
    expect(() => readMadeClass({ ...smallClass(), places: 5, seats: [{ seat: 30 }] })).toThrow(told);
    expect(() => readMadeClass({ ...fromTable, places: 5 }, `${HEAD}\n30,,178,108,12.5,112,3,218,,ltr\n`)).toThrow(
      told,
    );
  });

  it("announces a class without a single book, and closes one without its seats and their table", () => {
    const announced = readMadeClass({ ...smallClass(), seats: [], places: 12 });
    expect([announced.state, announced.awaiting.length, announced.awaiting[0]!.kit?.slug]).toEqual([
      "announced",
      12,
      "little-gull",
    ]);
    const closed = readMadeClass({ ...fromTable, state: "closed" });
    expect([closed.state, closed.seats, closed.awaiting]).toEqual(["closed", [], []]);
    expect(readMadeClass({ ...smallClass(), state: "held" })).toMatchObject({ state: "held", seats: [{ number: 1 }] });
  });

  it("gives every seat the class's units, where they are not its kit's own", () => {
    const [inches] = readMadeClass({ ...smallClass(), units: "in" }).seats;
    expect(inches!.refit.units).toBe("in");
    expect(fitSeats([inches!], []).fitting[0]!.kit.units).toBe("in");
    expect(readMadeClass(smallClass()).seats[0]!.refit.units).toBeUndefined();
  });

  it("reads a crate of substitute books as seats' books are read", () => {
    const book = { leafHeight: "18 cm", leafWidth: 110, blockThickness: 12, leaves: 110, direction: "rtl" };
    const { spares } = readMadeClass({ ...smallClass(), spares: [{ label: "blue spine", book }] });
    expect(spares).toMatchObject([{ label: "blue spine", book: { ...book, leafHeight: 180 } }]);
    expect(readMadeClass(smallClass()).spares).toEqual([]);
  });

  it("knows which supplies students bring, by their names or how these begin", () => {
    const bring = ["Bone folder", "button", "a lamp", "boneless"];
    expect(readMadeClass({ ...smallClass(), bring })).toMatchObject({ bring, brought: ["boneFolder", "button"] });
  });

  it("fills in defaults", () => {
    expect(readMadeClass(smallClass())).toMatchObject({
      units: "mm",
      paper: "a4",
      ready: [],
      waste: 0.1,
      sessions: [{ title: "The session", date: "2027-02-04", minutes: 120, aside: 15 }],
    });
  });

  it("reads the fixtures’ class: eight seats with eight books, one of which does not carry its kit", () => {
    const plan = readFixtureClass();
    expect(plan.seats.map((seat) => seat.number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    expect(new Set(plan.seats.map((seat) => JSON.stringify(seat.book))).size).toBe(8);
    const { fitting, misfits } = fitSeats(plan.seats, plan.kits);
    expect(misfits.map(({ seat }) => seat.number)).toEqual([6]);
    expect(fitting.some(({ kit }) => kit.book.direction === "rtl")).toBe(true);
    expect(fitting.some(({ kit }) => kit.book.plates.length > 0)).toBe(true);
  });
});

type Change = (matter: Record<string, unknown>) => object;
const fortnight = [
  { minutes: 60, date: "2027-02-11" },
  { minutes: 60, date: "2027-02-04" },
];
const wrong: readonly [name: string, change: Change, at: string, field: string, given: RegExp, allowed: RegExp][] = [
  [
    "a kit that is not there",
    (c) => ({ ...c, kits: ["little-gul"] }),
    "- little-gul",
    "kits[1]",
    /"little-gul"/,
    /little-gull/,
  ],
  ["a misspelt key", (c) => ({ ...c, plaice: "x" }), "plaice", "plaice", /unknown key/, /place/],
  ["no sessions", ({ sessions: _, ...c }) => c, "title", "sessions", /not given/, /sessions/i],
  ["a day that is none", (c) => ({ ...c, date: "2027-02-30" }), "date", "date", /2027-02-30/, /YYYY-MM-DD/],
  ["no seat at all", (c) => ({ ...c, seats: [] }), "seats", "seats", /no seat/, /at least one/],
  [
    "a leaf without a unit that is known",
    (c) => ({
      ...c,
      seats: [{ seat: 1, book: { leafHeight: "9 ft", leafWidth: 108, blockThickness: 12, leaves: 100 } }],
    }),
    "leafHeight",
    "seats[1].book.leafHeight",
    /9 ft/,
    /length/i,
  ],
  [
    "aside as long as the session",
    (c) => ({ ...c, sessions: [{ minutes: 30, aside: 30 }] }),
    "aside",
    "sessions[1].aside",
    /30/,
    /./,
  ],
  [
    "sessions that go back in time",
    (c) => ({ ...c, sessions: fortnight }),
    "date",
    "sessions[2].date",
    /2027-02-04/,
    /2027-02-11/,
  ],
  [
    "a class that is announced after its day",
    (c) => ({ ...c, announced: "2027-02-05" }),
    "announced",
    "announced",
    /2027-02-05/,
    /2027-02-04/,
  ],
  [
    "a price that is not known",
    (c) => ({ ...c, prices: { gluedots: 1 } }),
    "gluedots",
    "prices.gluedots",
    /unknown key/,
    /glueDots/,
  ],
  [
    "a table that is not there",
    (c) => ({ ...c, books: "book.csv" }),
    "books",
    "books",
    /book\.csv/,
    /CSV, XLSX or ODS/,
  ],
  [
    "a number of depths that is not the kit's",
    (c) => ({
      ...c,
      seats: [
        {
          seat: 1,
          book: { leafHeight: 178, leafWidth: 108, blockThickness: 12, leaves: 100 },
          fit: { depths: [10, 20, 30] },
        },
      ],
    }),
    "depths",
    "seats[1].fit.depths",
    /3 depths/,
    /2, one for each level/,
  ],
];

describe("what is wrong in a class", () => {
  it.each(wrong)("%s: one message with its place", (_, change, at, field, given, allowed) => {
    const matter = change(smallClass());
    const messages = messagesOfClass(matter);
    expect(messages.map((one) => one.field)).toEqual([field]);
    const [message] = messages;
    expect(message!.file).toBe("content/classes/made/index.md");
    expect(message!.given).toMatch(given);
    expect(message!.allowed).toMatch(allowed);
    expect(message!.remedy).not.toBe("");
    expect(`---\n${stringify(matter)}`.split("\n")[message!.line! - 1]).toContain(at);
  });

  it.each([
    ["an unknown column", `${HEAD},colour\n${ROW},red\n`, 1, "books table in cell K1", /colour/],
    [
      "a row that is too long",
      `${HEAD}\n${ROW}\n2,little-gull,178,108,12.5,112,3,218,,ltr,,red\n`,
      3,
      "books table",
      /"red"/,
    ],
    ["a broken quote", `${HEAD}\n1,"little-gull,178\n`, 2, "books table", /quote/i],
    ["an empty table", "", 1, "books table", /empty/],
    ["a count that is none", `${HEAD}\n1,,178,108,12.5,many,3,218,,ltr\n`, 2, "leaves in cell F2", /"many"/],
    [
      "a height without a unit that is known",
      `${HEAD}\n1,,17 hands,108,12.5,112,3,218,,ltr\n`,
      2,
      "leafHeight in cell C2",
      /17 hands/,
    ],
    ["plates that are no plates", `${HEAD}\n1,,178,108,12.5,112,3,218,four,ltr\n`, 2, "plates in cell I2", /four/],
    ["a seat twice", `${HEAD}\n${ROW}\n${ROW}\n`, 3, "seat in cell A3", /second time/],
    [
      "a kit that the class does not offer",
      `${HEAD}\n${ROW.replace("little-gull", "harbour-moon")}\n`,
      2,
      "kit in cell B2",
      /harbour-moon/,
    ],
  ])("in the table, %s", (_, table, line, field, given) => {
    const messages = messagesOfClass(fromTable, table);
    expect(messages).toHaveLength(1);
    expect(messages[0]).toMatchObject({ file: "content/classes/made/books.csv", line, field });
    expect(messages[0]!.given).toMatch(given);
  });

  it("tells of every bad cell of every row at once, in their order", () => {
    const table = `${HEAD}\n1,,178,108,12.5,many,3,218,four,ltr\n2,moon,178,9 ft,12.5,112\n\n2,,178,108,12.5,112\n2.5,,178,108,12.5,112\n`;
    const told = messagesOfClass(fromTable, table).map(({ line, field }) => [line, field]);
    expect(told).toEqual([
      [2, "plates in cell I2"],
      [3, "leafWidth in cell D3"],
      [6, "seat in cell A6"],
    ]);
    const [first] = messagesOfClass(fromTable, table.replace("four", ""));
    expect(first).toMatchObject({ line: 2, column: 6, field: "leaves in cell F2" });
  });

  it("names the column that a misspelt one may mean, and a column that is missing", () => {
    const [message] = messagesOfClass(fromTable, `${HEAD.replace("leafHeight", "leaf hieght")}\n${ROW}\n`);
    expect(message).toMatchObject({ line: 1, column: 3, remedy: expect.stringContaining("leafHeight") });
    expect(messagesOfClass(fromTable, "leafHeight,leaves\n178,112\n")[0]!.given).toBe('no column "seat"');
  });

  it.each(["Name", "First name", "student", "Participants", "e-mail", "phone number", "name of child"])(
    "refuses a column “%s” with the reason",
    (column) => {
      const [message, ...more] = messagesOfClass(fromTable, `${HEAD},${column}\n${ROW},x\n`);
      expect(more).toEqual([]);
      expect(message).toMatchObject({ line: 1, column: 11, field: "books table in cell K1" });
      expect(message!.allowed).toMatch(/nothing about persons: a class’s pages are public/);
    },
  );

  it.each(["name", "student", "firstName", "email"])("refuses the key %s of a seat with the same reason", (key) => {
    const [seat] = smallClass()["seats"] as object[];
    const [message] = messagesOfClass({ ...smallClass(), seats: [{ ...seat, [key]: "x" }] });
    expect(message).toMatchObject({ field: `seats[1].${key}` });
    expect(message!.allowed).toMatch(/nothing about persons/);
  });

  it("refuses a name where a seat's number stands, and takes no other key for a person's", () => {
    const [message] = messagesOfClass(fromTable, `${HEAD}\n${ROW.replace("1,", "somebody,")}\n`);
    expect(message).toMatchObject({ field: "seat in cell A2" });
    expect(message!.allowed).toMatch(/nothing about persons/);
    expect(messagesOfClass({ ...smallClass(), name: "x" })[0]!.allowed).not.toMatch(/persons/);
  });

  it("tells of all that is wrong with the front matter's seats at once", () => {
    const book = { leafHeight: 178, leafWidth: 108, blockThickness: 12, leaves: 100 };
    const seats = [
      { seat: 1, book, fit: { depths: [10, 20, 30] } },
      { seat: 2, book, kit: "harbour-moon" },
      { seat: 2, book },
      { seat: 5, kit: "moon" },
    ];
    const told = messagesOfClass({ ...smallClass(), seats, books: "books.csv" }, `${HEAD}\n${ROW}\n`);
    expect(told.map(({ field }) => field).toSorted()).toEqual([
      "seats[1].book",
      "seats[1].fit.depths",
      "seats[3].seat",
      "seats[4].kit",
    ]);
  });

  it("tells of two books for one seat", () => {
    const messages = messagesOfClass({ ...smallClass(), books: "books.csv" }, `${HEAD}\n${ROW}\n`);
    expect(messages.map((one) => one.field)).toEqual(["seats[1].book"]);
  });
});
