import { sharedSite } from "../../site/shared-site.ts";
import { awakeSuite } from "./bench-awake-suite.ts";
import { cornerSuite } from "./bench-corner-suite.ts";
import { movingSuite } from "./bench-moving-suite.ts";
import { promptSuite } from "./bench-prompt-suite.ts";

const site = sharedSite();

awakeSuite(site);
cornerSuite(site);
movingSuite(site);
promptSuite(site);
