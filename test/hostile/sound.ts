/** What is in the place of a file: a text, bytes, or what is no file. */
export type Content = string | Uint8Array | { readonly link: string } | "fifo" | "folder";

/** Files of a project by their paths below it; undefined takes a sound file away. */
export type Files = Readonly<Record<string, Content | undefined>>;

export const KIT = "content/kits/first-moon";
export const CLASS = "content/classes/one-evening";

/** The front matter of the sound kit, in lines that cases replace. */
export const PAGE = `---
title: First moon
summary: A moon over two hills.
picture:
  file: moon.svg
  levels:
    hills: ["#hills"]
    moon: ["#moon"]
levels:
  - { name: hills, depth: 14 }
  - { name: sky, depth: 22, background: true }
  - { name: moon, depth: 32 }
book:
  leafHeight: 200
  leafWidth: 130
  blockThickness: 21
  leaves: 170
  pageOneLeaf: 4
  lastPage: 332
fit:
  borderLeaves: [10, 10]
  height: 100
---
A moon for tests.
`;

const MOON = '<circle id="moon" cx="62" cy="32" r="20"/>';
const HILLS = '<path id="hills" d="M0 90 V66 Q26 44 54 64 T100 58 V90 Z"/>';

/** An SVG file with the sound kit's shapes and something more. */
export function picture(more = ""): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 90">\n${MOON}\n${HILLS}\n${more}</svg>\n`;
}

export const CLASS_PAGE = `---
title: One evening
date: 2027-01-14
place: Reading room
kits: [first-moon]
books: books.csv
sessions:
  - { starts: "18:30", minutes: 150 }
---
An evening for tests.
`;

export const TABLE = `seat,kit,leafHeight,leafWidth,blockThickness,leaves,pageOneLeaf,lastPage
1,first-moon,200,130,21,170,4,332
2,first-moon,205,132,22,172,4,336
`;

export const MOTIF = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><path d="M1 1h4v3h-4z"/></svg>\n';

/** A small sound project: a kit, a motif, settings and a page of a guide. Words and cautions are the program's own. */
export const SOUND: Files = {
  "content/site.yaml": "title: Tests\nlanguage: en\n",
  "content/motifs/block.svg": MOTIF,
  "content/guide/en/first.md": "---\ntitle: First\nsummary: A page.\norder: 1\n---\nA page for tests.\n",
  [`${KIT}/index.md`]: PAGE,
  [`${KIT}/moon.svg`]: picture(),
};

/** A sound class of the sound kit, for cases about classes. */
export const SOUND_CLASS: Files = {
  [`${CLASS}/index.md`]: CLASS_PAGE,
  [`${CLASS}/books.csv`]: TABLE,
};

/** What becomes of a project: it is told what is wrong with it, or it is built. */
export interface HostileCase {
  readonly name: string;
  /** Files on top of the sound ones; undefined takes one away. */
  readonly files: Files;
  readonly expect: "told" | "built";
  /** What one of the messages says, on its line. */
  readonly says?: RegExp;
}

/** The sound kit's page with something changed. @throws Error where nothing changes */
export function page(find: string | RegExp, put: string): Files {
  const text = PAGE.replace(find, () => put);
  if (text === PAGE) throw new Error(`the sound page has no ${find}`);
  return { [`${KIT}/index.md`]: text };
}

/** The sound kit with something more in its front matter. */
export function stating(yaml: string): Files {
  return page("book:\n", `${yaml}\nbook:\n`);
}

/** The sound kit with another picture. */
export function drawing(svg: string | Uint8Array): Files {
  return { [`${KIT}/moon.svg`]: svg };
}
