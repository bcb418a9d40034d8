import { showPanel } from "./panel.ts";
import { shared } from "./shared.ts";

shared().show = showPanel;
