import { join } from "node:path";
import { circleIn, type Import, importsIn, roomOf } from "./imports.ts";

/**
 * The fence of the house (part of `npm run lint`): imports point one way, and nothing runs in a circle, neither files nor
 * rooms. `--draw` prints the rooms as a graph (Mermaid) for DEVELOPERS.md.
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

function drawn(edges: readonly Import[]): string {
  const arrows = new Set(
    edges
      .map(({ from, to }) => [roomOf(from), roomOf(to)] as const)
      .filter(([from, to]) => from !== to)
      .map(([from, to]) => `  ${from} --> ${to}`),
  );
  return ["graph TD", ...[...arrows].sort()].join("\n");
}
