/** What may stand outside the marks, each by name. */
const ALLOWED: readonly RegExp[] = [
  // Addresses, and paths and names of files and folders; on paper an address may be broken over two lines.
  /\bhttps?:\/\/\S+/g,
  /[\w./-]+\.(?:html|pdf|svg|dxf|csv|json|md|ftl|yaml|xml|js|png)\b/g,
  /\bexample\.org\b/g,
  /\b(?:cut|quay|classes|evenings|seat-\d+)\//g,
  // Names of cut files and of layers in them.
  /\b(?:sheet-(?:a4|board)-)?(?:card|acetate|paper)(?:-\s?a4)?-\d+\b/g,
  /\b(?:through-cut|press-score|pencil-mark|measure-check)\b/g,
  // Letters that a sheet calls its parts by.
  /(?<![\p{L}\p{N}])[A-Z](?![\p{L}\p{N}])/gu,
  // The program's own name.
  /\bLeaflight\b/g,
  // Keys and values of front matter, in lists of keys and in lines to paste; a variable and the folder that is made.
  /\bawl, scissors, knife, mat, glueGun\./g,
  /\bbook, card, acetate, tape, glueDots, glue, bakingPaper, string, button, light, cells, blades, spacers\./g,
  /\{ seat: \d+, kit: [^«»]*\}/g,
  /\bLEAFLIGHT_[A-Z_]+/g,
  /\bdist\b/g,
  // Symbols of units.
  /(?<![\p{L}])(?:mm|cm|in|g)(?![\p{L}])/gu,
  // Names of formats and papers, and of a cell.
  /\b(?:SVG|DXF|PDF|CSV|JSON|A4|(?:US )?Letter|LED|CR2032)\b/g,
  // Written by Intl: months, the last join of a list, and halves of the day.
  /\b(?:January|February|March|April|May|June|July|August|September|October|November|December)\b/g,
  /\b(?:Monday|Tuesday|Wednesday|Thursday|Friday|Saturday|Sunday)\b/g,
  /\b(?:and|at|AM|PM)\b/g,
];

/**
 * Words of a text outside the marks « and », but for what is allowed, and for these names; a mark that nothing closes or
 * opens is told, too.
 */
export function unmarked(text: string, names: readonly RegExp[] = []): string[] {
  let depth = 0;
  let outside = "";
  for (const letter of text) {
    if (letter === "«") depth += 1;
    else if (letter === "»") depth -= 1;
    else if (depth === 0) outside += letter;
    if (depth < 0) return [`» without « in ${text.slice(0, 200)}`];
    if (letter === "»" && depth === 0) outside += "\u0000";
  }
  if (depth > 0) return [`« without » in …${text.slice(-200)}`];
  const rest = [...ALLOWED, ...names].reduce((left, allowed) => left.replace(allowed, "\u0000"), outside);
  return rest.match(/\p{L}[\p{L}\p{N}.’'-]*/gu) ?? [];
}
