import { readdirSync, renameSync, rmSync } from "node:fs";
import { join } from "node:path";
import { parse, stringify } from "yaml";
import { GUIDE_FIGURES } from "../../../../src/core/guide/guide-page.ts";
import { REFERENCES } from "../../../../src/core/guide/reference.ts";
import { PSEUDO } from "../../../../src/words/pseudo.ts";
import { fixtureFrontMatter } from "../../../input/kit/kit-folders.ts";
import { makeProject, type Project } from "../../../site/project.ts";

/** What an author states, in marks like those of the pseudo-language: a site's reader is to meet nothing else. */
export function mark(text: string): string {
  return `«${text}»`;
}

// biome-ignore lint/suspicious/noExplicitAny: front matter as YAML gives it
type Stated = any;

const CREDIT = {
  work: mark("Postcard of a quay"),
  licence: mark("CC0"),
  source: mark("town archive"),
  url: "https://example.org/",
};
const CLASS = "content/classes/evenings/index.md";

/** A project in the pseudo-language: a kit with all that a kit may have, a plain one in inches, and a class. All its authors' words are marked. */
export function markedProject(): Project {
  const project = makeProject({ kits: ["harbour-moon", "little-gull"], classes: true });
  const { author } = parse(project.read("content/site.yaml"));
  const site = {
    title: mark("Quay"),
    summary: mark("Pictures in books"),
    url: "https://example.org/quay/",
    language: PSEUDO,
  };
  project.write("content/site.yaml", stringify({ ...site, author: { ...author, name: mark("Workshop") } }));
  const { heading, title, ...home } = parse(project.read("content/index.md").split(/^---$/m)[1]!);
  project.write("content/index.md", page({ ...home, heading: mark(heading), title: mark(title) }));
  const cautions: Stated[] = parse(project.read("content/words/en/cautions.yaml"));
  project.write(
    "content/words/en/cautions.yaml",
    stringify(cautions.map((one) => marked(one, ["title", "short", "text"]))),
  );
  project.write("content/kits/harbour-moon/index.md", page(markedMoon()));
  project.write("content/kits/little-gull/index.md", page(markedGull()));
  writeClass(project);
  writeGuide(project);
  const motifs = join(project.folder, "content/motifs");
  for (const file of readdirSync(motifs))
    renameSync(join(motifs, file), join(motifs, `${mark(file.replace(".svg", ""))}.svg`));
  return project;
}

function page(matter: Stated): string {
  return `---\n${stringify(matter)}---\n${mark("A story told in one line.")}\n\n${mark("And another.")}\n`;
}

function marked<T extends object>(record: T, fields: readonly string[]): T {
  return Object.fromEntries(
    Object.entries(record).map(([key, value]) => [key, fields.includes(key) ? mark(value) : value]),
  ) as T;
}

function markedKit(slug: string): Stated {
  const matter = marked(fixtureFrontMatter(slug) as Stated, ["title", "summary"]);
  const { picture, levels, versions, links, licence } = matter;
  const selectors = Object.fromEntries(Object.entries(picture.levels).map(([name, value]) => [mark(name), value]));
  return {
    ...matter,
    versions: versions.map((one: Stated) => marked(one, ["note"])),
    links: links.map((one: Stated) => marked(one, ["label"])),
    licence: marked(licence, ["name"]),
    picture: { ...picture, levels: selectors },
    levels: levels.map((one: Stated) => marked(one, ["name"])),
  };
}

function markedMoon(): Stated {
  const { light, insert, ...kit } = markedKit("harbour-moon");
  return {
    ...kit,
    credit: CREDIT,
    light: marked(light, ["in"]),
    insert: {
      ...marked(insert, ["outline"]),
      card: { colour: "teal", name: mark("sea") },
      motifs: insert.motifs.map((one: Stated) => ({ ...marked(one, ["motif"]), card: "black" })),
    },
    prices: { card: 0.35, light: 2.4 },
    currency: "EUR",
    supplies: [{ item: mark("ribbon"), quantity: 300, unit: mark("ells"), price: 1 }],
    sheets: ["a4", { name: mark("Board"), width: 300, height: 400 }],
  };
}

/** The plain kit, in inches. */
function markedGull(): Stated {
  return { ...markedKit("little-gull"), units: "in" };
}

function writeClass(project: Project): void {
  const demo = "content/classes/winter-evenings";
  const matter = marked(parse(project.read(`${demo}/index.md`).split(/^---$/m)[1]!) as Stated, [
    "title",
    "summary",
    "place",
  ]);
  const sessions = matter.sessions.map((one: Stated) => marked(one, ["title"]));
  const stock = [{ item: mark("crate"), quantity: 2 }];
  const kits = ["little-gull", "harbour-moon"];
  // Seats of both kits, one of them inches, and one whose book does not fit.
  const books = project
    .read(`${demo}/books.csv`)
    .split("\n")
    .filter((line) => /^(?:seat|2|4|6|7),/.test(line));
  rmSync(join(project.folder, demo), { recursive: true });
  project.write(CLASS, page({ ...matter, kits, sessions, stock, bring: matter.bring.map(mark) }));
  project.write("content/classes/evenings/books.csv", books.join("\n"));
}

/** A chapter, and a page with every table of keys. */
function writeGuide(project: Project): void {
  rmSync(join(project.folder, "content/guide"), { recursive: true });
  const matter = (title: string, order: number) => ({ title: mark(title), summary: mark("A line"), order });
  const tables = REFERENCES.map((name) => `## ${mark(name)}\n\n<!-- reference: ${name} -->\n`).join("\n");
  const drawings = GUIDE_FIGURES.map((name) => `\n<!-- figure: ${name} -->\n`).join("");
  project.write("content/guide/en/folding.md", page(matter("Folding", 1)) + drawings);
  project.write("content/guide/en/keys.md", page({ ...matter("Keys", 2), kind: "reference" }) + tables);
}

/** Spoils both kits as their authors may: one by fields that cannot be so, the other by a level deeper than its leaves. */
export function spoilKits(project: Project): void {
  const gull = markedGull();
  const moon = markedMoon();
  const levels = gull.levels.map((one: Stated) => (one.background ? { ...one, depth: 60 } : one));
  const fit = { ...moon.fit, foldStyle: mark("rolled"), head: mark("near the top"), height: 0 };
  project.write("content/kits/little-gull/index.md", page({ ...gull, levels }));
  project.write("content/kits/harbour-moon/index.md", page({ ...moon, fit, [mark("heading")]: 1, title: undefined }));
}
