import { afterAll, beforeAll } from "vitest";
import { type OpenedSite, openSite } from "../../site/shared-site.ts";
import { eveningsSuite } from "./evenings-suite.ts";
import { listSuite } from "./list-suite.ts";
import { takeOverSuite } from "./take-over-suite.ts";

let site: OpenedSite;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site?.close());

eveningsSuite(() => site);
takeOverSuite(() => site);
listSuite(() => site);
