import { wholeSuite } from "./whole-suite.ts";

wholeSuite();
