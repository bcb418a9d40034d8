import type { PdfFile } from "./pdf-file.ts";

/** A tagged element's name as Chromium writes it. */
const NAME = /\(node\d{8,}\)/g;

/** Chromium's names of tagged elements differ from run to run, and so does their order: they are counted anew as they come in the file. */
export function renumberElements(file: PdfFile): void {
  const ranks = new Map<string, string>();
  const rankOf = (name: string): string => {
    if (!ranks.has(name)) ranks.set(name, `(node${String(ranks.size + 1).padStart(8, "0")})`);
    return ranks.get(name)!;
  };
  for (const [number, text] of file.objects)
    if (typeof text === "string" && text.includes("(node")) file.objects.set(number, text.replace(NAME, rankOf));
  const root = referred(file, file.root, "StructTreeRoot");
  const tree = root === undefined ? undefined : referred(file, root, "IDTree");
  if (tree !== undefined) sortTree(file, tree);
}

/** Brings a name tree (ISO 32000 7.9.6) into the order of its names, which its readers rely on; each leaf keeps its size. */
function sortTree(file: PdfFile, tree: number): void {
  const leaves = leavesOf(file, tree).map((number) => ({
    number,
    pairs: [...textOf(file, number).matchAll(/(\(node\d+\))\s*(\d+ \d+ R)/g)].map(([, name, element]) => ({
      name: name!,
      element: element!,
    })),
  }));
  const pairs = leaves.flatMap((leaf) => leaf.pairs).sort((one, other) => (one.name < other.name ? -1 : 1));
  for (const { number, pairs: old } of leaves) {
    const own = pairs.splice(0, old.length);
    const names = own.map(({ name, element }) => `${name} ${element}`).join(" ");
    const limits = `${own[0]?.name} ${own.at(-1)?.name}`;
    const text = textOf(file, number)
      .replace(/\/Names\s*\[[^\]]*\]/, `/Names [${names}]`)
      .replace(/\/Limits\s*\[[^\]]*\]/, `/Limits [${limits}]`);
    file.objects.set(number, text);
  }
}

/** Chromium's tree has one level of leaves below its root, or is a leaf. */
function leavesOf(file: PdfFile, tree: number): number[] {
  const kids = /\/Kids\s*\[([^\]]*)\]/.exec(textOf(file, tree))?.[1];
  if (kids === undefined) return [tree];
  return [...kids.matchAll(/(\d+) \d+ R/g)].flatMap(([, number]) => leavesOf(file, Number(number)));
}

/** The number of the object that an object names under a key. */
function referred(file: PdfFile, from: number, key: string): number | undefined {
  const number = new RegExp(`/${key}\\s+(\\d+) \\d+ R`).exec(textOf(file, from))?.[1];
  return number === undefined ? undefined : Number(number);
}

function textOf({ objects }: PdfFile, number: number): string {
  const text = objects.get(number);
  if (typeof text !== "string") throw new Error(`object ${number} is no text`);
  return text;
}
