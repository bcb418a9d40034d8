import { join } from "node:path";
import { circleIn, type Import, importsIn, roomOf } from "./imports.ts";

/**
 * The fence of the house (part of `npm run lint`): imports point one way, and nothing runs in a circle, neither files nor
 * rooms. `--draw` prints rings and rooms as a graph (Mermaid), which stands in DEVELOPERS.md.
 */

/** What each ring may import. */
const ALLOWED: Readonly<Record<string, readonly string[]>> = {
  core: ["core"],
  words: ["core", "words"],
  input: ["core", "words", "input"],
  output: ["core", "words", "output"],
  build: ["core", "words", "input", "output", "build"],
  page: ["core", "words", "input", "output", "page"],
};

/** Rings that run anywhere: neither Node nor a page is there. */
const ANYWHERE = ["core", "words", "output"];

const SOURCE = join(import.meta.dirname, "../../src");
const imports = importsIn(SOURCE);
const inside = imports.filter(({ to }) => to.endsWith(".ts"));

if (process.argv.includes("--draw")) console.log(drawn(inside));
else {
  const faults = [...upward(inside), ...foreign(imports), ...circles(inside)];
  for (const fault of faults) console.error(fault);
  if (faults.length > 0) process.exitCode = 1;
}

function upward(edges: readonly Import[]): string[] {
  return edges
    .filter(({ from, to }) => !ALLOWED[ringOf(from)]?.includes(ringOf(to)))
    .map(
      ({ from, to }) =>
        `src/${from} imports src/${to}: ${ringOf(from)} may import ${ALLOWED[ringOf(from)]?.join(", ")}`,
    );
}

/** Node's own modules, in a ring that runs anywhere or reached by a page. */
function foreign(edges: readonly Import[]): string[] {
  const next = Map.groupBy(edges, (edge) => edge.from);
  const reached = new Set(edges.map(({ from }) => from).filter((file) => ["page", ...ANYWHERE].includes(ringOf(file))));
  for (const file of reached) for (const { to } of next.get(file) ?? []) if (to.endsWith(".ts")) reached.add(to);
  return edges
    .filter(({ from, to }) => to.startsWith("node:") && reached.has(from))
    .map(({ from, to }) => `src/${from} imports ${to}, and runs in pages, too`);
}

function circles(edges: readonly Import[]): string[] {
  const files = circleIn(edges);
  const rooms = circleIn(
    edges.map(({ from, to }) => ({ from: roomOf(from), to: roomOf(to) })).filter(({ from, to }) => from !== to),
  );
  return [
    ...(files ? [`files import each other in a circle: ${files.join(" → ")}`] : []),
    ...(rooms ? [`rooms import each other in a circle: ${rooms.join(" → ")}`] : []),
  ];
}

function ringOf(file: string): string {
  return file.split("/")[0]!;
}

/** Rings as boxes with their rooms, and what each ring imports of others; none that another arrow's way leads to as well. */
function drawn(edges: readonly Import[]): string {
  const rings = Object.keys(ALLOWED);
  const boxes = rings.flatMap((ring) => [
    `  subgraph ${ring}`,
    `    ${ring}-rooms["${lines(roomsOf(ring, edges)).join("<br>")}"]`,
    "  end",
  ]);
  const used = (ring: string): string[] =>
    rings.filter(
      (other) => other !== ring && edges.some(({ from, to }) => ringOf(from) === ring && ringOf(to) === other),
    );
  const arrows = rings.flatMap((ring) =>
    used(ring)
      .filter((other) => !used(ring).some((between) => used(between).includes(other)))
      .map((other) => `  ${ring} --> ${other}`),
  );
  return ["graph BT", ...boxes, ...arrows].join("\n");
}

/** The rooms of a ring by their names in it; none but files of its own, the ring's. */
function roomsOf(ring: string, edges: readonly Import[]): string[] {
  const files = edges.flatMap(({ from, to }) => [from, to]).filter((file) => ringOf(file) === ring);
  const rooms = new Set(files.map((file) => roomOf(file).slice(ring.length + 1)).filter((room) => room !== ""));
  return [...rooms].sort();
}

/** Names side by side, few enough to a line that a box stays readable. */
function lines(names: readonly string[]): string[] {
  const rows: string[][] = [[]];
  for (const name of names) {
    if ([...rows.at(-1)!, name].join(" · ").length > 44) rows.push([]);
    rows.at(-1)!.push(name);
  }
  return rows.map((row) => row.join(" · "));
}
