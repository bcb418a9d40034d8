import { describe, expect, it } from "vitest";
import { classPage } from "../../../../src/output/parts/class/class-page.ts";
import { measuringCard } from "../../../../src/output/parts/class/measuring-card.ts";
import { printPlanPage } from "../../../../src/output/parts/class/print-plan-page.ts";
import { privatePage } from "../../../../src/output/parts/class/private-page.ts";
import { seatPage } from "../../../../src/output/parts/class/seat-page.ts";
import { teacherPacket } from "../../../../src/output/parts/class/teacher-packet.ts";
import { html } from "../../../../src/output/parts/markup.ts";
import { classCard } from "../../../../src/output/views/class/class-card.ts";
import type { ClassView } from "../../../../src/output/views/class/class-view.ts";
import { fixtureClassView } from "./made-view.ts";

const view = fixtureClassView();
const seat = (number: number) => view.seats.find((one) => one.number === number)!;
const page = (of = view) => String(classPage(of, html`<p>Come.</p>`, (target) => `..${target}`));
const packet = (of = view) => String(teacherPacket(of));
const count = (text: string, wanted: string) => text.split(wanted).length - 1;
/** The cells of the costs, row by row. */
const costRows = (of: ClassView) => {
  const [table] = /<table class="costs">[\s\S]*?<\/table>/.exec(packet(of))!;
  const rows = [...table.matchAll(/<tr>([\s\S]*?)<\/tr>/g)].slice(1);
  return rows.map(([, row]) => [...row!.matchAll(/<t[hd][^>]*>([^<]*)</g)].map(([, cell]) => cell!));
};
/** So many seats with the first seat's book. */
const seatsOfOne = (seats: number) =>
  Array.from({ length: seats }, (_, i) => ({ ...view.plan.seats[0]!, number: i + 1 }));
/** What is read: no markup. */
const read = (markup: string) =>
  markup
    .replace(/<svg[\s\S]*?<\/svg>/g, "")
    .replace(/<[^>]*>/g, "|")
    .replaceAll("\u00a0", " ");

describe("classPage(view, story, link)", () => {
  it("has the teacher's own story as it is and her words escaped", () => {
    const own = fixtureClassView({ title: "Folds & <knots>", bring: ["a <tray>"] });
    expect(page(own)).toContain(`<h1 dir="auto">Folds &amp; &lt;knots&gt;</h1>`);
    expect(page(own)).toContain(`<li dir="auto">a &lt;tray&gt;</li>`);
    expect(page(own)).toContain('<section class="telling prose"><p>Come.</p></section>');
  });

  it("has a link of its contents for every section that it names", () => {
    const sections = [...page().matchAll(/<section id="([^"]+)"/g)].map(([, id]) => id);
    const contents = /<nav class="contents"[\s\S]*?<\/nav>/.exec(page())![0];
    expect([...contents.matchAll(/href="#([^"]+)"/g)].map(([, id]) => id)).toEqual(sections);
  });

  it("asks for all that a seat's row needs, and makes the row for every seat and kit of the class", () => {
    for (const name of ["leafHeight", "leaves", "pageOneLeaf", "lastPage", "plates", "direction"])
      expect(page()).toContain(`id="find-${name}" name="${name}"`);
    const [seats, kits] = ["row-seat", "row-kit"].map((id) => {
      const [select] = new RegExp(`<select id="${id}"[\\s\\S]*?</select>`).exec(page())!;
      return [...select.matchAll(/<option value="([^"]+)"/g)].map(([, value]) => value);
    });
    expect([seats!.length, kits]).toEqual([8, ["little-gull", "harbour-moon", "evening-boat"]]);
  });

  it("lists every seat, also the one whose pattern is not there yet", () => {
    expect(count(page(), '<li class="seat">')).toBe(8);
    expect(count(page(), "Pattern to come")).toBe(1);
    expect(page()).not.toContain("seat-6/packet-a4.pdf");
  });

  it("is public: it has no seat's trouble, no money and no link to the teacher's papers", () => {
    const short = view.schedule.flatMap((row) => row.short || []);
    const told = [...short, ...view.seats.flatMap(({ misfit }) => misfit?.why ?? [])];
    expect(told.length).toBeGreaterThan(1);
    for (const text of told) expect(read(page())).not.toContain(text);
    expect(page()).not.toMatch(/€|fits? not|not fit|teacher\.pdf|private\//i);
  });
});

describe("a class whose books are still to come", () => {
  const awaiting = [
    { number: 9, kit: undefined },
    { number: 10, kit: view.plan.kits[1] },
  ];
  const collecting = fixtureClassView({ awaiting, state: "collecting" });
  const announced = fixtureClassView({ seats: [], awaiting, state: "announced" });

  it("says how far it is, and lists every seat", () => {
    expect(read(page(collecting))).toContain("8 of 10 seats have their book.");
    expect(count(page(collecting), '<li class="seat">')).toBe(10);
    expect(count(page(collecting), "Book to come")).toBe(2);
    expect(read(page(announced))).toContain("2 seats are waiting for a book.");
    expect(read(page())).toContain("Every seat has its book.");
  });

  it("has the others' patterns, list and costs as without those seats", () => {
    expect(collecting.costs).toEqual(view.costs);
    expect(collecting.shopping).toEqual(view.shopping);
    expect(read(packet(collecting))).toContain("Not in this list: seats 9 and 10, whose books are still to come.");
    expect(read(packet(collecting))).toContain("Measure the books for seats 9 and 10, enter them and build again.");
  });

  it("says nothing of stock while there is no list that could use it", () => {
    expect(announced.plan.stock.length).toBeGreaterThan(0);
    expect(announced.unusedStock).toEqual([]);
  });

  it("tells at such a seat what to do, and needs no kit", () => {
    const [open, settled] = collecting.seats.slice(-2);
    expect(read(String(seatPage(open!, collecting)))).toContain("The book for this seat is still to come.");
    expect(String(seatPage(open!, collecting))).not.toContain("data-keeps");
    expect(String(seatPage(settled!, collecting))).toContain('data-keeps="harbour-moon"');
  });

  it("has a packet for its teacher before there is any book: cards for all seats, handouts of all kits, and no list", () => {
    const text = packet(announced);
    expect(count(text, 'class="seat-code"')).toBe(2);
    expect(count(text, "Handout ·")).toBe(3);
    expect(text).not.toMatch(/<table class="(shopping|costs|reach)|Shopping list|Cut sheets of|Who may need/);
    expect(String(privatePage([classCard(announced)], (target) => target))).not.toContain("all-seats");
  });
});

describe("a class that is over", () => {
  const sections = (of: ClassView) => [...page(of).matchAll(/<section id="([^"]+)"/g)].map(([, id]) => id);

  it("asks for no book any more, and keeps its seats while it is not closed", () => {
    expect(sections(fixtureClassView({ state: "held" }))).toEqual(["evenings", "seats", "cautions"]);
    const closed = fixtureClassView({ state: "closed", seats: [], awaiting: [] });
    expect(sections(closed)).toEqual(["evenings"]);
    expect(read(page(closed))).toContain("This class is over.");
  });
});

describe("seatPage(seat, view)", () => {
  it("tells lengths for hands in whole millimetres", () => {
    expect(read(String(seatPage(seat(2), view)))).toMatch(/Hold width\|\|\d+ mm\|/);
  });

  it("tells them in the class's units", () => {
    const inches = fixtureClassView({ units: "in" });
    const text = read(String(seatPage(inches.seats[1]!, inches)));
    expect(text).toMatch(/Hold width\|\|\d+( \d+\/\d+)? in\|/);
    expect(text).not.toMatch(/\d mm\b/);
    const misfit = read(String(seatPage(inches.seats[5]!, inches)));
    expect(misfit).toMatch(/Make the picture \d+( \d+\/\d+)? in tall/);
    expect(misfit).not.toMatch(/\d mm\b/);
  });

  it("tells a reader what to do, and no key of the teacher's table", () => {
    const text = read(String(seatPage(seat(6), view)));
    expect(text).toContain("This picture does not fit this book yet");
    expect(text).not.toMatch(/this seat’s|leafHeight|borderLeaves/);
    // A teacher is told of ways that were tried, and of no other where there are some.
    expect(read(packet())).toContain("Make the picture 89");
    expect(read(packet())).not.toContain("Set this seat’s height to");
  });

  it("offers a book of the crate to the one whose own does not fit, to its reader and to the teacher", () => {
    const book = view.plan.seats[1]!.book;
    const crate = fixtureClassView({ spares: [{ label: "blue <spine>", book }] });
    const misfit = crate.seats.find(({ number }) => number === 6)!;
    const words = "Take the book “blue &lt;spine&gt;” from the crate: it fits as it is.";
    expect(String(seatPage(misfit, crate))).toMatch(new RegExp(`height=222&amp;[^"]*">${words}`));
    expect(packet(crate)).toContain(words);
    expect(packet()).not.toContain("from the crate");
  });

  it("carries the changed book to every page that it offers", () => {
    const links = [...String(seatPage(seat(6), view)).matchAll(/href="(\.\.\/\.\.\/\.\.\/kits[^"]+)"/g)];
    expect(links.length).toBeGreaterThanOrEqual(3);
    for (const [, link] of links) expect(link).toMatch(/\/index\.html\?.*height=105&amp;/);
  });

  it("is public: it does not say by how much the sessions are too short", () => {
    const row = view.schedule.find(({ seat }) => seat === 2)!;
    expect(row.short).toMatch(/\d/);
    expect(read(String(seatPage(seat(2), view)))).not.toContain(row.short);
    expect(read(packet())).toContain(row.short);
  });
});

describe("privatePage(classes, link)", () => {
  const papers = (of = view) => String(privatePage([classCard(of)], (target) => `..${target}index.html`));

  it("leads to each class's page and to all of its papers", () => {
    const links = [...papers().matchAll(/href="([^"]+)"/g)].map(([, link]) => link!);
    expect(links.slice(0, 11)).toEqual([
      "../classes/winter-evenings/index.html",
      "classes/winter-evenings/teacher.pdf",
      "classes/winter-evenings/teacher/index.html",
      "classes/winter-evenings/print-plan.pdf",
      "classes/winter-evenings/print-plan/index.html",
      "classes/winter-evenings/room/index.html",
      "classes/winter-evenings/all-seats-a4.pdf",
      "classes/winter-evenings/to-read-a4.pdf",
      "classes/winter-evenings/to-cut-out-a4.pdf",
      "classes/winter-evenings/cut-sheets.pdf",
      "classes/winter-evenings/cut/card-a4-1-mm.svg",
    ]);
  });

  it("leaves the line of cut files out where there are none", () => {
    expect(read(papers())).toContain("Cut files for the whole class: |card-a4-1|, |");
    const misfit = fixtureClassView({ seats: view.plan.seats.filter(({ number }) => number === 6) });
    expect(read(papers(misfit))).not.toContain("Cut files");
  });
});

describe("teacherPacket(view)", () => {
  it("has one page of cards for eight seats, and each card its code or says why not", () => {
    expect(count(packet(), 'class="seat-code"')).toBe(8);
    const bare = packet(fixtureClassView({}, {}));
    expect(count(bare, 'class="seat-code"')).toBe(0);
    expect(count(bare, "This site has no address yet, so there is no code.")).toBe(8);
  });

  it("lists what to cut before the class, or lets the students cut", () => {
    expect(read(packet())).toContain("Cut |2 × door, card|");
    expect(read(packet())).not.toContain("Students cut their own parts in class.");
    const open = read(packet(fixtureClassView({ ready: [] })));
    expect(open).toContain("lay out their card, acetate and paper. Students cut their own parts in class.");
    expect(open).toContain("2 × door, card: seats 2 and 8; on sheet card-a4-1");
  });

  it("speaks of light and window only where a seat has one", () => {
    const plain = fixtureClassView({ seats: view.plan.seats.filter(({ kit }) => kit.slug === "little-gull") });
    for (const text of [packet(plain)].map(read)) {
      expect(text).not.toMatch(/Cells in|Cells counted back|acetate|Test every light/);
      expect(text).toContain("Check the tools: sharp blades, caps on.");
    }
    expect(read(packet())).toMatch(/Cells in, door screwed[\s\S]*Cells counted back/);
  });

  it("writes money with two decimals, by its code or as the teacher writes it", () => {
    expect(read(packet())).toContain("Materials that all seats use: |€21.10|. Still to pay");
    const own = read(packet(fixtureClassView({ currency: "shells" })));
    expect(own).toContain("|21.10 shells|");
    expect(own).toContain("|0.80 shells|");
  });

  it("shares the costs out over the seats that fit, in a row for each", () => {
    const rows = costRows(view);
    expect(rows.map(([seat]) => Number(seat))).toEqual([1, 2, 3, 4, 5, 7, 8]);
    expect(rows[1]![1]).toBe("Harbour Moon");
    const cents = rows.map(([, , amount]) => Math.round(100 * Number(amount!.slice(1))));
    expect(cents.reduce((a, b) => a + b, 0)).toBe(2110);
  });

  it.each([1, 12, 16, 40, 60])("puts no more side by side with %d seats than with eight", (seats) => {
    const own = fixtureClassView({ seats: seatsOfOne(seats), prices: { card: 99_999, acetate: 99_999 } });
    expect(costRows(own)).toHaveLength(seats);
    const columns = [...packet(own).matchAll(/<thead><tr>([\s\S]*?)<\/tr>/g)].map(([, head]) => count(head!, "<th"));
    // The widest: a row's name, and a box for each of sixteen seats.
    expect(Math.max(...columns)).toBeLessThanOrEqual(17);
  });

  it("names what is in stock and not needed, and no list of it where all is", () => {
    expect(read(packet())).not.toContain("In stock, not needed here");
    const stock = [{ id: undefined, item: "gold leaf", quantity: 1 }];
    expect(read(packet(fixtureClassView({ stock })))).toContain("In stock, not needed here: gold leaf.");
  });

  it("says of a handout's step that it is done where the teacher has it ready", () => {
    const done = "Done for you before the class.";
    expect(count(packet(fixtureClassView({ ready: [] })), done)).toBe(0);
    // The gauge and the score lines of each kit.
    expect(count(packet(fixtureClassView({ ready: ["scores"] })), done)).toBe(2 * view.handouts.length);
  });

  it("says that every seat finishes where all do", () => {
    const long = fixtureClassView({
      sessions: [{ title: "A day", date: undefined, starts: undefined, minutes: 1400, aside: 0, buffer: 0 }],
    });
    expect(read(packet(long))).toContain("By this estimate, every seat that fits finishes in these sessions.");
    expect(packet(long)).not.toContain('<ul class="late">');
  });
});

describe("the plan of the evening and the bags in teacherPacket(view)", () => {
  // The fixtures’ first session: 18:30, 150 minutes, 25 aside: 6 to settle in, 63 of work, 13 of pause, 62 of work, 6 to tidy.
  it("has a running order by the clock for each session", () => {
    const [order] = packet().match(/<table class="order">[\s\S]*?<\/table>/)!;
    expect([...order!.matchAll(/<th scope="row">([^<]*)</g)].map(([, time]) => time)).toEqual([
      "18:30",
      "18:36",
      "19:39",
      "19:52",
      "20:54",
    ]);
    expect(count(packet(), '<table class="order">')).toBe(3);
  });

  it("tells each seat's target at each pause", () => {
    expect(view.schedule.every(({ pauses }) => pauses.length === 3)).toBe(true);
    expect(count(packet(), "At the pause: ")).toBe(7 * 3);
    expect(count(String(seatPage(seat(2), view)), "At the pause: ")).toBe(3);
  });

  it("says which tools seats share, only where they do", () => {
    expect(read(packet())).not.toContain("Tools to share");
    expect(read(packet(fixtureClassView({ tools: { mat: 2 } })))).toContain("There are 2 × cutting mat");
  });

  it("tells for each seat what lies in its bag, and where the gauge is", () => {
    const rows = view.bags.map(({ seat: number, parts, gauge }) => [number, parts.length, gauge]);
    expect(rows).toEqual([
      [1, 1, ""],
      [2, 10, ""],
      [3, 0, "The gauge is in the bag of seat 1 and goes round."],
      [4, 0, "The gauge is in the bag of seat 1 and goes round."],
      [5, 1, ""],
      [7, 0, "The gauge is in the bag of seat 1 and goes round."],
      [8, 9, "The gauge is in the bag of seat 2 and goes round."],
    ]);
    expect(view.bags[0]!.parts).toEqual(["scoring gauge (card-a4-1)"]);
    expect(view.sharedGauges[0]).toContain("One gauge serves seats 1, 3, 4, and 7");
  });
});

describe("printPlanPage(view, files)", () => {
  it("says that pages are not counted yet, or counts them", () => {
    expect(read(String(printPlanPage(view)))).toContain("Pages are counted when the site is built");
    const priced = fixtureClassView({ pagePrice: 0.05 });
    const files = [
      { file: "teacher", pages: 17 },
      { file: "to-read", pages: 176 },
      { file: "to-cut-out", pages: 21 },
    ] as const;
    const plan = read(String(printPlanPage(priced, files)));
    for (const words of [
      "teacher.pdf",
      "to-read-a4.pdf",
      "88 sheets of paper, both sides",
      "21 sheets of card, one side",
    ])
      expect(plan).toContain(words);
    // By hand: 17 + 176 + 21 sides; 9 and 88 sheets of paper.
    expect(plan).toContain("97 sheets of paper, 21 of card");
    expect(plan).toContain("€10.70");
    expect(read(String(printPlanPage(view, files)))).toContain("State your price for a printed side");
  });
});

describe("measuringCard(view)", () => {
  const card = String(measuringCard(view));

  it("asks twice for each figure of a book, lengths in the class's unit", () => {
    for (const label of ["Leaf height", "Leaf width", "Thickness", "Leaves", "Last page", "Reading direction"])
      expect(count(card, `<dt>${label}</dt>`)).toBe(2);
    expect(count(card, '<span class="line"></span> mm')).toBe(6);
    expect(count(String(measuringCard(fixtureClassView({ units: "in" }))), '<span class="line"></span> in<')).toBe(6);
  });

  it("says what its ruler may measure", () => {
    expect(card).toContain("10 cm must be 99.5 to 100.5 mm.");
  });
});
