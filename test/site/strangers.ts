import { cpSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { stringify } from "yaml";
import { FIXTURE_KITS, FIXTURES, fixtureFolder, fixtureFrontMatter, fixtureText } from "../input/kit/kit-folders.ts";

/** A kit that is a fixture on another book: as if many people had each made one for the book on their shelf. */
export interface Stranger {
  readonly slug: string;
  /** The whole text of its index.md. */
  readonly text: string;
  /** The fixture that its picture is of. */
  readonly fixture: string;
}

const MM_PER_INCH = 25.4;

/** Books differ by so much from the fixture's. */
const SCALES = { from: 0.97, to: 1.16 };
const CALIPERS = { from: 0.94, to: 1.08 };
const MORE_LEAVES = { from: 0, to: 36 };
const MORE_BORDER = { from: -2, to: 9 };

/** As many kits as are asked for, the same every time: fixtures in turn, each on a book of its own. */
export function makeStrangers(count: number): Stranger[] {
  return Array.from({ length: count }, (_, i) => {
    const fixture = FIXTURE_KITS[i % FIXTURE_KITS.length]!;
    return { slug: `${fixture}-${i + 1}`, text: strangerText(fixture, i), fixture };
  });
}

/** Writes such kits into a folder of content, in the place of the kits that it has. */
export function writeStrangers(content: string, count: number): readonly Stranger[] {
  const strangers = makeStrangers(count);
  cpSync(join(FIXTURES, "content/motifs"), join(content, "motifs"), { recursive: true });
  cpSync(join(FIXTURES, "content/site.yaml"), join(content, "site.yaml"));
  for (const { slug, text, fixture } of strangers) {
    const folder = join(content, "kits", slug);
    const pictures = readdirSync(fixtureFolder(fixture)).filter((name) => name !== "index.md");
    for (const name of pictures) cpSync(join(fixtureFolder(fixture), name), join(folder, name), { recursive: true });
    writeFileSync(join(folder, "index.md"), text);
  }
  return strangers;
}

function strangerText(fixture: string, i: number): string {
  const { title, book, fit, ...matter } = fixtureFrontMatter(fixture);
  const scale = between(SCALES, i, 2);
  // A picture that reaches to the tail still does not reach beyond it.
  const longer = (length: number | string): string => `${(Math.ceil(toMm(length) * scale * 2) / 2).toFixed(1)} mm`;
  const shorter = (length: number | string): string => `${(Math.floor(toMm(length) * scale * 2) / 2).toFixed(1)} mm`;
  const leaves = book.leaves + Math.round(between(MORE_LEAVES, i, 3));
  const thickness = toMm(book.blockThickness) * (leaves / book.leaves) * between(CALIPERS, i, 5);
  const own = {
    ...matter,
    title: `${title}, book ${i + 1}`,
    book: {
      ...book,
      leafHeight: longer(book.leafHeight),
      leafWidth: longer(book.leafWidth),
      blockThickness: `${thickness.toFixed(1)} mm`,
      leaves,
      lastPage: book.lastPage + 2 * (leaves - book.leaves),
    },
    fit: {
      ...fit,
      borderLeaves: fit.borderLeaves.map(
        (own: number, end: number) => own + Math.round(between(MORE_BORDER, i, 7 + 4 * end)),
      ),
      head: shorter(fit.head),
      height: shorter(fit.height),
    },
  };
  const story = fixtureText(fixture).split(/^---$/m).slice(2).join("---");
  return `---\n${stringify(own)}---${story}`;
}

/** Spreads evenly over a range, for each root in an order of its own (multiples of a square root, without the whole). */
function between({ from, to }: { readonly from: number; readonly to: number }, i: number, root: number): number {
  return from + (to - from) * ((i * Math.sqrt(root)) % 1);
}

/** Lengths of the fixtures: millimetres, or inches with a fraction. */
function toMm(length: number | string): number {
  if (typeof length === "number") return length;
  const [, whole, over, under] = /^(\d+)(?: (\d+)\/(\d+))? in$/.exec(length)!;
  return (Number(whole) + Number(over ?? 0) / Number(under ?? 1)) * MM_PER_INCH;
}
