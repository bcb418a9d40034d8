import { afterAll, beforeAll } from "vitest";
import { finderSuite } from "../finder/finder-suite.ts";
import { offlineSuite } from "./offline-suite.ts";
import { policySuite } from "./policy-suite.ts";
import { serveProject } from "./serve-project.ts";
import type { Served } from "./visit.ts";

let served: Served;
let close: () => Promise<void>;

beforeAll(async () => {
  ({ served, close } = await serveProject(["harbour-moon", "little-gull", "tide-and-lamp"]));
});

afterAll(() => close());

finderSuite(() => served);
policySuite(() => served);
offlineSuite(() => served);
