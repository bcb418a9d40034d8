import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { type Asked, readAsked } from "./asked.ts";
import type { Figure } from "./figure.ts";
import { FixturesSite } from "./fixtures-site.ts";
import { writeGuide } from "./guide-part.ts";
import { keep, readKept } from "./kept.ts";
import type { PartName } from "./line.ts";
import { LINES } from "./lines.ts";
import { measureBuilds } from "./parts/builds.ts";
import { measureBytes } from "./parts/bytes.ts";
import { measureDesk } from "./parts/desk.ts";
import { measureFunctions } from "./parts/functions.ts";
import { measurePackets } from "./parts/packets.ts";
import { measurePage } from "./parts/page.ts";
import { measureServe } from "./parts/serve.ts";
import { measureShards } from "./parts/shards.ts";
import type { Part } from "./scale.ts";
import { inUnit, isWorse, tableOf } from "./table.ts";

/** `npm run benchmark`: measures every line of the table, and fails where one is worse by a third than what is kept. */
const PARTS: Readonly<Record<PartName, Part>> = {
  functions: measureFunctions,
  page: measurePage,
  desk: measureDesk,
  builds: measureBuilds,
  shards: measureShards,
  serve: measureServe,
  packets: measurePackets,
  bytes: measureBytes,
};

const RESULT = join(import.meta.dirname, "../../.cache/benchmark.json");

const asked = askedFor(process.argv.slice(2));
const site = new FixturesSite();
const figures: Figure[] = [];
try {
  for (const name of asked.only) {
    console.error(`measures ${name}`);
    figures.push(...(await PARTS[name](asked, site)));
  }
} finally {
  site.remove();
}
mkdirSync(join(RESULT, ".."), { recursive: true });
writeFileSync(RESULT, `${JSON.stringify(figures, undefined, 2)}\n`);
console.log(tableOf(figures));
if (asked.accept) writeGuide(keep(figures));
else tellWorse(figures);

function askedFor(args: readonly string[]): Asked {
  try {
    return readAsked(args);
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exit(1);
  }
}

function tellWorse(now: readonly Figure[]): void {
  const kept = new Map(readKept().figures.map((one) => [one.line, one]));
  for (const figure of now) {
    const before = kept.get(figure.line);
    if (before === undefined || !isWorse(figure, before)) continue;
    const { work, unit } = LINES[figure.line];
    console.error(
      `worse by more than a third: ${work}: ${inUnit(figure.value, unit)}, was ${inUnit(before.value, unit)}`,
    );
    process.exitCode = 1;
  }
}
