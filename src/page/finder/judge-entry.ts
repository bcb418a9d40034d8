import { seatTime } from "../../core/class/schedule.ts";
import { farnessOf, prospectOf } from "../../core/finder/prospect.ts";
import { judge } from "../../core/finder/verdict.ts";
import { makeAny } from "../../core/refit/any-making.ts";

/** Script that the catalogue fetches once a book is stated: what works kits out for it. */
self.leaflightJudge = { farnessOf, prospectOf, judge: (kit, book) => judge(kit, book, makeAny), seatTime };
