import { beforeAll, describe } from "vitest";
import { documentSuite } from "./document-suite.ts";
import { pagesSuite } from "./pages-suite.ts";
import { type Printed, readPrinted } from "./printed.ts";
import { tableSuite } from "./table-suite.ts";
import { trueScaleSuite } from "./true-scale-suite.ts";

describe("printed packets", () => {
  let kits: Printed | undefined;
  const printed = (): Printed => kits!;
  beforeAll(async () => {
    kits = await readPrinted();
  });

  pagesSuite(printed);
  trueScaleSuite(printed);
  tableSuite(printed);
  documentSuite(printed);
});
