import { afterAll, beforeAll } from "vitest";
import { type OpenedSite, openSite } from "../../site/shared-site.ts";
import { finderSuite } from "../finder/finder-suite.ts";
import { offlineSuite } from "./offline-suite.ts";
import { policySuite } from "./policy-suite.ts";
import { wholeSuite } from "./whole-suite.ts";

let site: OpenedSite;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site?.close());

finderSuite(() => site);
policySuite(() => site);
offlineSuite(() => site);
wholeSuite();
