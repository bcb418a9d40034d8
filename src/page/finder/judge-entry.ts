import { farnessOf, prospectOf } from "../../core/finder/prospect.ts";
import { judge } from "../../core/finder/verdict.ts";
import { rowTime } from "./row-time.ts";

/** Script that the catalogue fetches once a book is stated: what works kits out for it. */
self.leaflightJudge = { farnessOf, prospectOf, judge, rowTime };
