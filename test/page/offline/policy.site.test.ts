import { sharedSite } from "../../site/shared-site.ts";
import { policySuite } from "./policy-suite.ts";

const site = sharedSite();

policySuite(site);
