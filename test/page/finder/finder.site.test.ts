import { sharedSite } from "../../site/shared-site.ts";
import { finderSuite } from "./finder-suite.ts";

const site = sharedSite();

finderSuite(site);
