import { afterAll, beforeAll, describe } from "vitest";
import { documentSuite } from "./document-suite.ts";
import { pagesSuite } from "./pages-suite.ts";
import { type Printed, printKits } from "./printed.ts";
import { tableSuite } from "./table-suite.ts";
import { trueScaleSuite } from "./true-scale-suite.ts";

// One build serves all: the packet and large-print files of three kits on both papers.
describe("printed packets", () => {
  let kits: Printed | undefined;
  const printed = (): Printed => kits!;
  beforeAll(async () => {
    kits = await printKits();
  });
  afterAll(() => kits?.project.remove());

  pagesSuite(printed);
  trueScaleSuite(printed);
  tableSuite(printed);
  documentSuite(printed);
});
