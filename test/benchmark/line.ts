/** How a figure is told: as a number of times, as a share of something, or in a unit that a machine changes. */
export type Unit = "times" | "turns" | "%" | "ms" | "s" | "min" | "MiB" | "MB" | "kB";

/** A line of the table. */
export interface Line {
  readonly part: PartName;
  /** What is measured, as the guide says it. */
  readonly work: string;
  readonly unit: Unit;
  readonly goal: number;
  /** Whether more is better; else less is. */
  readonly more?: true;
}

export const PART_NAMES = ["functions", "page", "desk", "builds", "shards", "serve", "packets", "bytes"] as const;

export type PartName = (typeof PART_NAMES)[number];
