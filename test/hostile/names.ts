import {
  CLASS,
  type Files,
  type HostileCase,
  KIT,
  MOTIF,
  PAGE,
  picture,
  SOUND,
  SOUND_CLASS,
  stating,
} from "./sound.ts";

/** Names of files, folders and things that disks and addresses cannot tell apart or hold. */

const LONG = "m".repeat(250);

function kitNamed(name: string): Files {
  const moved = Object.entries(SOUND).filter(([file]) => file.startsWith(KIT));
  return {
    ...Object.fromEntries(moved.map(([file]) => [file, undefined])),
    ...Object.fromEntries(moved.map(([file, content]) => [file.replace(KIT, `content/kits/${name}`), content])),
  };
}

const folders = ["Moon", "moon_1", "moon 1", "-moon", "moon-", "mo--on", "möon", "луна", "月", "con.", LONG].map(
  (name): HostileCase => ({
    name: `a kit called ${name}`,
    files: kitNamed(name),
    expect: "told",
    says: /small letters, digits/,
  }),
);

const soundFolders = ["2026-10-03-moon", "con", "index", "404", "guide", "m".repeat(100)].map(
  (name): HostileCase => ({ name: `a kit called ${name}`, files: kitNamed(name), expect: "built" }),
);

const pages = ["First.md", "my page.md", "ünder.md", `${LONG}.md`].map(
  (name): HostileCase => ({
    name: `a page of the guide called ${name}`,
    files: { [`content/guide/en/${name}`]: SOUND["content/guide/en/first.md"] },
    expect: "told",
    says: /small letters, digits/,
  }),
);

const level = (name: string): Files => ({
  [`${KIT}/index.md`]: PAGE.replaceAll("hills:", `${name}:`).replace("name: hills", `name: ${name}`),
});

export const NAMES: readonly HostileCase[] = [
  ...folders,
  ...soundFolders,
  ...pages,
  {
    name: "two levels of one name but for capitals",
    files: level("Moon"),
    expect: "told",
    says: /a second level "moon"/i,
  },
  { name: "a level called __proto__", files: level("__proto__"), expect: "told" },
  { name: "a level called constructor", files: level("constructor"), expect: "built" },
  { name: "a level in another script", files: level("холмы"), expect: "built" },
  {
    name: "a sheet twice",
    files: stating("sheets: [a4, a4]"),
    expect: "told",
    says: /sheets\[2\]: a second sheet "A4"/,
  },
  {
    name: "two sheets of one name but for capitals",
    files: stating("sheets: [{ name: Card, width: 200, height: 300 }, { name: CARD, width: 210, height: 300 }]"),
    expect: "told",
    says: /sheets\[2\]: a second sheet "CARD"/,
  },
  {
    name: "sheets named in other scripts",
    files: stating(
      "sheets: [{ name: Ä, width: 200, height: 300 }, { name: Ö, width: 210, height: 300 }, { name: карта, width: 210, height: 200 }]",
    ),
    expect: "built",
  },
  { name: "motifs that differ in capitals", files: { "content/motifs/Block.svg": MOTIF }, expect: "built" },
  { name: "a motif named with 250 letters", files: { [`content/motifs/${LONG}.svg`]: MOTIF }, expect: "built" },
  { name: "a motif ending in .SVG", files: { "content/motifs/other.SVG": MOTIF }, expect: "built" },
  {
    name: "a picture named with 250 letters",
    files: {
      ...stating(""),
      [`${KIT}/index.md`]: PAGE.replace("moon.svg", `${LONG}.svg`),
      [`${KIT}/${LONG}.svg`]: picture(),
    },
    expect: "built",
  },
  {
    name: "a picture named with 300 letters",
    files: { [`${KIT}/index.md`]: PAGE.replace("moon.svg", `${LONG}${LONG}.svg`) },
    expect: "told",
    says: /up to 255 characters/,
  },
  {
    name: "a picture above the kit",
    files: { [`${KIT}/index.md`]: PAGE.replace("moon.svg", "../../motifs/block.svg") },
    expect: "told",
    says: /outside its folder/,
  },
  {
    name: "a picture by its whole path",
    files: { [`${KIT}/index.md`]: PAGE.replace("moon.svg", "/etc/hostname") },
    expect: "told",
    says: /outside its folder/,
  },
  {
    name: "a picture that is the folder itself",
    files: { [`${KIT}/index.md`]: PAGE.replace("moon.svg", '"."') },
    expect: "told",
    says: /outside its folder|a folder/,
  },
  ...["..", ".", "../first-moon/index.md", "/etc/hostname", "nothing.csv", `${LONG}${LONG}.csv`].map(
    (books): HostileCase => ({
      name: `books: ${books.slice(0, 30)}`,
      files: {
        ...SOUND_CLASS,
        [`${CLASS}/index.md`]: String(SOUND_CLASS[`${CLASS}/index.md`]).replace("books.csv", JSON.stringify(books)),
      },
      expect: "told",
      says: /books: .*(is not there|up to 255 characters)/,
    }),
  ),
];
