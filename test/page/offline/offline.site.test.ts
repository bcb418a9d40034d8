import { sharedSite } from "../../site/shared-site.ts";
import { offlineSuite } from "./offline-suite.ts";

const site = sharedSite();

offlineSuite(site);
