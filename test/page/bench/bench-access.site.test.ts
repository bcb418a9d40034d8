import { sharedSite } from "../../site/shared-site.ts";
import { accessSuite } from "./bench-access-suite.ts";

const site = sharedSite();

accessSuite(site);
