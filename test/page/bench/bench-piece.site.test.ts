import { sharedSite } from "../../site/shared-site.ts";
import { fileSuite } from "./bench-file-suite.ts";
import { keepingSuite } from "./bench-keeping-suite.ts";
import { measureSuite } from "./bench-measure-suite.ts";
import { recoverySuite } from "./bench-recovery-suite.ts";

const site = sharedSite();

fileSuite(site);
keepingSuite(site);
measureSuite(site);
recoverySuite(site);
