import { afterAll, beforeAll } from "vitest";
import { type OpenedSite, openSite } from "../../site/shared-site.ts";
import { accessSuite } from "./bench-access-suite.ts";
import { awakeSuite } from "./bench-awake-suite.ts";
import { cornerSuite } from "./bench-corner-suite.ts";
import { fileSuite } from "./bench-file-suite.ts";
import { handsSuite } from "./bench-hands-suite.ts";
import { keepingSuite } from "./bench-keeping-suite.ts";
import { keyboardSuite } from "./bench-keyboard-suite.ts";
import { lowSuite } from "./bench-low-suite.ts";
import { measureSuite } from "./bench-measure-suite.ts";
import { movingSuite } from "./bench-moving-suite.ts";
import { promptSuite } from "./bench-prompt-suite.ts";
import { recoverySuite } from "./bench-recovery-suite.ts";

let site: OpenedSite;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site?.close());

movingSuite(() => site);
cornerSuite(() => site);
promptSuite(() => site);
awakeSuite(() => site);
fileSuite(() => site);
recoverySuite(() => site);
measureSuite(() => site);
lowSuite(() => site);
handsSuite(() => site);
accessSuite(() => site);
keyboardSuite(() => site);
keepingSuite(() => site);
