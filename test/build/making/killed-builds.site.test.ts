import { afterAll, beforeAll, describe, it } from "vitest";
import { seeded } from "../../oracle/random-shapes.ts";
import { makeProject } from "../../site/project.ts";
import { keptByAll } from "../../site/shared-site.ts";
import { damageCaches } from "../../torture/caches.ts";
import { killBuilds } from "../../torture/kills.ts";
import type { Bench } from "../../torture/trial.ts";
import { buildTwice } from "../../torture/two-builds.ts";
import { type TwoStates, twoStates } from "../../torture/two-states.ts";

/** The same moments today and tomorrow; `npm run torture` takes others, and more of them. */
const BENCH: Bench = { random: seeded(1), goesOn: () => true, say: () => undefined };

describe.skipIf(process.platform !== "linux")("builds in a bad world", () => {
  let states: TwoStates;
  beforeAll(async () => {
    states = await twoStates(makeProject({ kits: ["little-gull"], kept: keptByAll() }));
  });
  afterAll(() => states?.project.remove());

  // First, while all that both print is kept.
  it("never publish each other's address", () => buildTwice(1, BENCH, states));

  it("leave dist whole and nothing behind when they are killed at random", () => killBuilds(2, BENCH, states));

  it("make the same site from kept files that were damaged", () => damageCaches(1, BENCH, states));
});
