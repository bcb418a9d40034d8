import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import jsqr from "jsqr";
import type { Page } from "puppeteer";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { ADDRESS } from "../../site/address.ts";
import { type OwnSite, openOwnSite } from "../../site/own-site.ts";
import { newReader, textOf, visit } from "../../site/visit.ts";

const CLASS = "classes/spring-evening";
const MATTER = "content/classes/spring-evening/index.md";
const ANNOUNCED = `---
title: A spring evening
date: 2027-04-08
announced: 2027-02-01
place: Reading room
kits: [little-gull, harbour-moon]
places: 3
sessions: [{ starts: "18:00", minutes: 300, aside: 20 }]
pace: 1.2
prices: { card: 0.37 }
currency: EUR
bring: [reading glasses]
---
Come and fold.
`;
/** What readers measured, as they type it. */
const WIDE = {
  leafHeight: "22,2 cm",
  leafWidth: "148",
  blockThickness: "31",
  leaves: "248",
  pageOneLeaf: "5",
  lastPage: "486",
};
const LOW = {
  leafHeight: "105",
  leafWidth: "98",
  blockThickness: "14",
  leaves: "128",
  pageOneLeaf: "4",
  lastPage: "248",
};
const GULL = {
  leafHeight: "178",
  leafWidth: "110",
  blockThickness: "9.5",
  leaves: "96",
  pageOneLeaf: "3",
  lastPage: "186",
};

let site: OwnSite;
/** The lines that the teacher has scanned. */
const scanned: string[] = [];

const read = (path: string) => readFileSync(join(site.dist, path), "utf8");
const plain = (path: string) =>
  read(path)
    .replaceAll(/<[^>]*>/g, "|")
    .replaceAll("\u00a0", " ");
const has = (path: string) => existsSync(join(site.dist, path));

/** What a phone reads from the code that stands on the page. Source: jsqr, an unrelated reader of QR codes (ISO/IEC 18004). */
async function scan(page: Page): Promise<string> {
  const code = await page.waitForSelector("[data-row-code]:not([hidden]) svg");
  const { data, info } = await sharp(await code!.screenshot())
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return (jsqr as unknown as typeof jsqr.default)(new Uint8ClampedArray(data), info.width, info.height)!.data;
}

/** A reader of the class's page types her book, chooses, and shows her code. */
async function fillIn(path: string, book: Readonly<Record<string, string>>, choose: Readonly<Record<string, string>>) {
  const { context, page } = await newReader(site);
  await visit(site, page, path);
  for (const [name, text] of Object.entries(book)) await page.type(`#find-${name}`, text);
  for (const [name, value] of Object.entries(choose)) await page.select(`#row-${name}`, value);
  await page.waitForFunction(() => {
    const line = document.querySelector<HTMLInputElement>("#row-line")!.value;
    // The time comes after the line, and is taken away when the line changes.
    return line !== "" && document.querySelector("[data-row-time]")!.textContent !== "";
  });
  const time = await textOf(page, "[data-row-time]");
  const line = await page.$eval("#row-line", (input) => (input as HTMLInputElement).value);
  scanned.push(await scan(page));
  const address = new URL(page.url()).search;
  await context.close();
  return { time, line, address };
}

beforeAll(async () => {
  site = await openOwnSite({ kits: ["little-gull", "harbour-moon"], files: { [MATTER]: ANNOUNCED } });
});

afterAll(() => site?.close());

describe("a class from its announcement to its end", () => {
  it("is announced: what to bring, card, form, dates, feed, and three seats whose books are to come", async () => {
    const page = plain(`${CLASS}/index.html`);
    for (const words of ["3 seats are waiting for a book.", "reading glasses", "measuring card", "Tell your teacher"])
      expect(page).toContain(words);
    expect(page.split("Book to come")).toHaveLength(4);
    expect(has(`${CLASS}/measuring-card.pdf`)).toBe(true);
    expect(read(`${CLASS}/class.ics`)).toContain("DTSTART:20270408T180000");
    expect(read("feed.xml")).toContain(`<id>${ADDRESS}${CLASS}/</id>`);
    expect(read(`${CLASS}/seat-2/index.html`)).toContain('href="../index.html?seat=2"');
  });

  it("takes a book from its form: page 1, last page, pace, whether it will be finished here, and a code", async () => {
    const first = await fillIn(`${CLASS}/index.html?seat=2`, WIDE, { kit: "harbour-moon", pace: "1.5" });
    expect(first.line).toBe("2,harbour-moon,222,148,31,248,5,486,,ltr,1.5,");
    expect(first.time).toMatch(/^About .* of work at this pace: about .* is left to finish at home\.$/);
    expect(first.address).toMatch(/&seat=2&kit=harbour-moon&pace=1\.5$/);
    const low = await fillIn(`${CLASS}/index.html?kit=harbour-moon&seat=3`, LOW, {});
    expect(low.time).toMatch(/^Harbour Moon does not fit this book as it is\./);
    const gull = await fillIn(`${CLASS}/index.html${low.address.replace(/^.*(&seat)/, "?$1")}`, GULL, {
      seat: "1",
      kit: "little-gull",
    });
    expect(gull.time).toMatch(/^About .* of work at this pace: it will be finished here\.$/);
    expect(scanned).toEqual([first.line, low.line, gull.line]);
  });

  it("collects books: scanned lines are the table, a misfit comes with a line to enter, the others have their packets", async () => {
    site.write("content/classes/spring-evening/books.csv", `${scanned.slice(0, 2).join("\n")}\n`);
    site.change(MATTER, "places: 3", "places: 3\nbooks: books.csv");
    const { stderr } = await site.rebuild();
    expect(stderr).toMatch(/spring-evening, seat 3: harbour-moon does not fit its book/);
    expect(plain(`${CLASS}/index.html`)).toContain("2 of 3 seats have their book.");
    expect([1, 2, 3].map((seat) => has(`${CLASS}/seat-${seat}/packet-a4.pdf`))).toEqual([false, true, false]);
    const line = / +below seats: (- \{ seat: 3, .*\})/.exec(stderr)![1]!;
    site.write("content/classes/spring-evening/books.csv", `${scanned.join("\n")}\n`);
    site.change(MATTER, "places: 3", `places: 3\nseats:\n  ${line}`);
  });

  it("is fitted once every line is there, and publishes no price and no shortfall", async () => {
    const { stderr } = await site.rebuild();
    expect(stderr).not.toContain("does not fit");
    expect(plain(`${CLASS}/index.html`)).toContain("Every seat has its book.");
    const teacher = plain("private/classes/spring-evening/teacher/index.html");
    const amounts = [...teacher.matchAll(/€[\d.,]+\d/g)].map(([amount]) => amount);
    const short = [...teacher.matchAll(/: ([^|]*\d[^|]*) short\./g)].map(([, one]) => one!);
    expect([amounts.length > 0, short.length > 0]).toEqual([true, true]);
    const published = readdirSync(join(site.dist, CLASS), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && /\.(html|json|csv|svg|ics)$/.test(entry.name))
      .map((entry) => relative(site.dist, join(entry.parentPath, entry.name)));
    expect(published.length).toBeGreaterThan(15);
    for (const path of published)
      for (const figure of [...amounts, ...short]) expect(plain(path), path).not.toContain(figure);
  });

  it("is held, then closed: no form, no feed; patterns stay, then the page alone", async () => {
    site.change(MATTER, "places: 3", "places: 3\nstate: held");
    await site.rebuild();
    expect(plain(`${CLASS}/index.html`)).toContain("This class is over.");
    expect([has(`${CLASS}/seat-2/packet-a4.pdf`), has(`${CLASS}/class.ics`)]).toEqual([true, false]);
    expect(read("feed.xml")).not.toContain(CLASS);
    site.change(MATTER, "state: held", "state: closed");
    await site.rebuild();
    expect([has(`${CLASS}/index.html`), has(`${CLASS}/seat-2/index.html`)]).toEqual([true, false]);
  });
});
