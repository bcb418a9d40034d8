import { parseSync, type Statement, Visitor } from "oxc-parser";

/** More turns than any test's loops take together, and done in a second or two. */
const MOST_TURNS = 1e7;

/** A source whose loops end with an error instead of never, for faults that make a loop endless. */
export function boundLoops(source: string): string {
  const bodies: Statement[] = [];
  const loop = ({ body }: { body: Statement }): void => void bodies.push(body);
  const { program } = parseSync("loops.ts", source);
  new Visitor({
    WhileStatement: loop,
    DoWhileStatement: loop,
    ForStatement: loop,
    ForInStatement: loop,
    ForOfStatement: loop,
  }).visit(program);
  if (bodies.length === 0) return source;
  const count = `if (++turnsTaken > ${MOST_TURNS}) throw new Error("an endless loop");`;
  const inserts = bodies.flatMap(({ start, end }) => [
    { at: start, text: `{ ${count} ` },
    { at: end, text: " }" },
  ]);
  const bounded = inserts
    .toSorted((a, b) => b.at - a.at)
    .reduce((text, { at, text: insert }) => text.slice(0, at) + insert + text.slice(at), source);
  return `${bounded}\nvar turnsTaken = 0;\n`;
}
