import { afterAll, beforeAll } from "vitest";
import { serveProject } from "../offline/serve-project.ts";
import type { Served } from "../offline/visit.ts";
import { accessSuite } from "./bench-access-suite.ts";
import { awakeSuite } from "./bench-awake-suite.ts";
import { fileSuite } from "./bench-file-suite.ts";
import { keepingSuite } from "./bench-keeping-suite.ts";
import { keyboardSuite } from "./bench-keyboard-suite.ts";
import { measureSuite } from "./bench-measure-suite.ts";
import { movingSuite } from "./bench-moving-suite.ts";
import { promptSuite } from "./bench-prompt-suite.ts";
import { recoverySuite } from "./bench-recovery-suite.ts";

let served: Served;
let close: () => Promise<void>;

beforeAll(async () => {
  ({ served, close } = await serveProject(["harbour-moon", "little-gull"]));
});

afterAll(() => close());

movingSuite(() => served);
promptSuite(() => served);
awakeSuite(() => served);
fileSuite(() => served);
recoverySuite(() => served);
measureSuite(() => served);
accessSuite(() => served);
keyboardSuite(() => served);
// Last, for it builds the site again after a change.
keepingSuite(() => served);
