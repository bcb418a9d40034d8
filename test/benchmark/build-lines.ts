import type { Line } from "./line.ts";

/** Numbers of kits that are built. */
export const COUNTS = [10, 100, 1000] as const;

export type Count = (typeof COUNTS)[number];

type BuildLine = "" | "-bare" | "-memory" | "-flat" | "-none" | "-one";

export type BuildLineId = `build-${Count}${BuildLine}`;

/** The lines of a build of so many kits. */
export function buildLines(count: Count): Readonly<Record<BuildLineId, Line>> {
  const kits = `${count.toLocaleString("en")} kits`;
  const part = "builds";
  const lines: Readonly<Record<BuildLine, Omit<Line, "part">>> = {
    "": { work: `${kits} without packets: processor for a kit`, unit: "s", goal: 0.1 },
    "-bare": { work: `${kits} without packets, as against Eleventy alone`, unit: "times", goal: 2 },
    "-memory": { work: `${kits} without packets: most memory`, unit: "MiB", goal: 1024 },
    "-flat": { work: `The memory for ${kits}, as against that for a tenth of them`, unit: "times", goal: 1.5 },
    "-none": { work: `${kits} built again, nothing changed, of the first build`, unit: "%", goal: 5 },
    "-one": { work: `${kits} built again, one changed, of the first build`, unit: "%", goal: 8 },
  };
  const own = Object.entries(lines).map(([name, line]) => [`build-${count}${name}`, { part, ...line }] as const);
  return Object.fromEntries(own) as Record<BuildLineId, Line>;
}

export const BUILD_LINES = Object.assign({}, ...COUNTS.map(buildLines)) as Readonly<Record<BuildLineId, Line>>;
