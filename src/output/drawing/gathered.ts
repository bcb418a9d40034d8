import { tag } from "./svg-text.ts";

/**
 * The same drawing with what looks alike written once, as on a sheet of strips: its paths become one for each look, what says a
 * stroke above what does not, and the words stand above both, in their order, in a group with the look that they share. What is
 * drawn is to hold paths that begin with their data, and words, and nothing else.
 */
export function gathered(drawing: string, shared: Readonly<Record<string, string | number>>): string {
  const paths: Record<string, string> = {};
  const words = drawing.replace(/<path d="([^"]*)"([^>]*)\/>/g, (_, d: string, look: string) => {
    paths[look] = (paths[look] ?? "") + d;
    return "";
  });
  const drawn = Object.entries(paths).map(([look, d]) => `<path d="${d}"${look}/>`);
  const isStroke = (path: string): number => Number(path.includes("stroke"));
  return drawn.sort((a, b) => isStroke(a) - isStroke(b)).join("") + tag("g", shared, words);
}
