import { sharedSite } from "../../site/shared-site.ts";
import { eveningsSuite } from "./evenings-suite.ts";
import { listSuite } from "./list-suite.ts";
import { takeOverSuite } from "./take-over-suite.ts";

const site = sharedSite();

eveningsSuite(site);
listSuite(site);
takeOverSuite(site);
