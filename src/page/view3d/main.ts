import { showControls } from "./controls.ts";
import { shared } from "./shared.ts";

shared().show = showControls;
