import { sharedSite } from "../../site/shared-site.ts";
import { handsSuite } from "./bench-hands-suite.ts";
import { keyboardSuite } from "./bench-keyboard-suite.ts";
import { lowSuite } from "./bench-low-suite.ts";

const site = sharedSite();

handsSuite(site);
keyboardSuite(site);
lowSuite(site);
