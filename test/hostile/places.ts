import { CLASS, type Content, type Files, type HostileCase, KIT, SOUND, SOUND_CLASS, stating } from "./sound.ts";

/** Files that are no files, or are elsewhere. */

/** Each file that the program reads, with what names it. */
const READ: Readonly<Record<string, Files>> = {
  "content/site.yaml": {},
  "content/motifs/block.svg": {},
  "content/guide/en/first.md": {},
  "content/words/en/cautions.yaml": {},
  "content/words/en/own.ftl": {},
  "content/words/en/bench.ftl": {},
  [`${KIT}/index.md`]: {},
  [`${KIT}/moon.svg`]: {},
  [`${KIT}/moon.jpg`]: stating("photos: [{ file: moon.jpg, alt: The moon }]"),
  [`${CLASS}/index.md`]: SOUND_CLASS,
  [`${CLASS}/books.csv`]: SOUND_CLASS,
};

const SECRET = "password: hunter2\n";

const INSTEAD: Readonly<Record<string, { readonly content: Content; readonly says: RegExp }>> = {
  "a folder": { content: "folder", says: /a folder/ },
  "a pipe": { content: "fifo", says: /a pipe/ },
  "a link to nothing": { content: { link: "nothing" }, says: /a link that leads nowhere/ },
  "a link to itself": { content: { link: "." }, says: /leads (nowhere|out)|a folder/ },
  "a link to an endless device": { content: { link: "/dev/zero" }, says: /leads out/ },
  "a link to a file outside": { content: { link: "../../../../../etc/hostname" }, says: /leads (out|nowhere)/ },
  "a link to a private file beside content": { content: { link: "../../../secret.txt" }, says: /leads (out|nowhere)/ },
};

const places = Object.entries(READ).flatMap(([file, named]) =>
  Object.entries(INSTEAD).map(([name, { content, says }]): HostileCase => {
    const files = { ...named, "secret.txt": SECRET, [file]: content };
    return { name: `${name} in place of ${file}`, files, expect: "told", says };
  }),
);

/** Folders that are files, lead out or are missing. */
const folders: readonly HostileCase[] = [
  ...["content/kits", "content/motifs", "content/guide/en", "content/classes"].flatMap((folder): HostileCase[] => [
    {
      name: `a file in place of ${folder}`,
      files: { ...without(folder), [folder]: "A file.\n" },
      expect: "told",
      says: /no folder/,
    },
    {
      name: `a link out of content in place of ${folder}`,
      files: { ...without(folder), [folder]: { link: "/tmp" } },
      expect: "told",
      says: /leads out/,
    },
  ]),
  {
    name: "a kit folder that is a link out of content",
    files: { ...without(KIT), "elsewhere/index.md": "---\ntitle: secret\n---\n", [KIT]: { link: "../../elsewhere" } },
    expect: "told",
    says: /leads out of content/,
  },
  {
    name: "a kit folder that is a link to another folder of content",
    files: {
      ...without(KIT),
      "content/kept/index.md": SOUND[`${KIT}/index.md`],
      "content/kept/moon.svg": SOUND[`${KIT}/moon.svg`],
      [KIT]: { link: "../kept" },
    },
    expect: "built",
  },
  {
    name: "a picture that is a link to a file of the kit",
    files: { [`${KIT}/true.svg`]: SOUND[`${KIT}/moon.svg`], [`${KIT}/moon.svg`]: { link: "true.svg" } },
    expect: "built",
  },
  {
    name: "a picture that is a link to a file of another kit",
    files: { "content/motifs/moon.svg": undefined, [`${KIT}/moon.svg`]: { link: "../../motifs/block.svg" } },
    expect: "told",
    says: /leads out of content\/kits\/first-moon/,
  },
  {
    name: "a kit folder without index.md",
    files: { ...SOUND_CLASS, [`${KIT}/index.md`]: undefined },
    expect: "told",
    says: /first-moon.*is a draft/,
  },
  { name: "no kit, no class, no guide", files: without("content/"), expect: "built" },
  { name: "hidden files everywhere", files: hidden(), expect: "built" },
];

export const PLACES: readonly HostileCase[] = [...places, ...folders];

/** Takes everything away below a folder. */
function without(folder: string): Files {
  const below = Object.keys(SOUND).filter((file) => file.startsWith(folder));
  return Object.fromEntries(below.map((file) => [file, undefined]));
}

/** What other systems leave in folders. */
function hidden(): Files {
  const names = [
    "content/motifs/._block.svg",
    "content/guide/en/._first.md",
    "content/kits/.DS_Store",
    `${KIT}/._moon.svg`,
  ];
  return Object.fromEntries(names.map((name) => [name, new Uint8Array([0, 5, 22, 7, 0, 2, 0, 0])]));
}
