import type { Kit } from "../../core/kit/kit.ts";
import { whyText } from "../../words/findings/failure-why.ts";
import { readAgain } from "../../words/findings/read-again.ts";
import * as say from "../../words/messages.ts";
import type { FitAnswer, Ways } from "./fit-answer.ts";
import type { Fitting, Misfit } from "./fitted.ts";
import { holdPage } from "./held.ts";
import { verdictWords } from "./verdict-words.ts";

/** Tells in the panel what became of a book, and marks the page where it stays behind. */
export class FitTelling {
  #answer: FitAnswer;
  #act: Pick<Ways, "take" | "draw">;

  constructor(answer: FitAnswer, act: Pick<Ways, "take" | "draw">) {
    this.#answer = answer;
    this.#act = act;
  }

  /** How the kit comes out, and what would come out better; `own` is the author's kit where the book is another than hers. */
  fit({ view, judgement, offers }: Fitting, own: Kit | undefined): void {
    holdPage(false);
    if (own) this.#answer.say(verdictWords(own, view, judgement), this.#ways(offers, view.kit, say.fitPanelBetter));
    else this.#answer.say([say.fitPanelOwn()]);
  }

  /** Why the kit does not fit, and what would help. */
  misfit({ failure, kit, offers }: Misfit): void {
    holdPage(true);
    const ways = this.#ways(offers, kit, say.fitPanelWays);
    const rest = ways || !offers ? [] : [readAgain(failure, kit) ?? say.fitPanelNoWay()];
    this.#answer.say([say.fitPanelMisfit({ why: whyText(failure, kit) }), ...rest], ways, true);
  }

  /** That a figure cannot be used. */
  wrongField(): void {
    holdPage(true);
    this.#answer.say([say.fitPanelWrongField()], undefined, true);
  }

  #ways(offers: Misfit["offers"], { units }: Kit, lead: (told: { count: number }) => string): Ways | undefined {
    return offers?.length ? { lead: lead({ count: offers.length }), offers, units, ...this.#act } : undefined;
  }
}
