import type { Line } from "./line.ts";

/** Lines about sites that are made in parts, and what is reckoned by them. */
export const SHARD_LINES = {
  "part-kit": { part: "shards", work: "A part of a site, without packets: processor for a kit", unit: "s", goal: 0.1 },
  "join-kit": { part: "shards", work: "Parts joined to a site: processor for a kit", unit: "s", goal: 0.02 },
  "part-10000": {
    part: "shards",
    work: "10,000 kits without packets on 8 machines, reckoned: processor for one machine’s part",
    unit: "min",
    goal: 3,
  },
  "join-10000": {
    part: "shards",
    work: "10,000 kits, reckoned: processor for joining all parts",
    unit: "min",
    goal: 4,
  },
} as const satisfies Readonly<Record<string, Line>>;
