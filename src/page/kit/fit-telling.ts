import type { Kit } from "../../core/kit/kit.ts";
import { whyText } from "../../words/findings/failure-why.ts";
import { readAgain } from "../../words/findings/read-again.ts";
import * as say from "../../words/messages.ts";
import type { FitAnswer, Ways } from "./fit-answer.ts";
import type { FitMade } from "./fit-maker.ts";
import { holdPage } from "./held.ts";

/** Tells in the panel what became of a book, and marks the page where it stays behind. */
export class FitTelling {
  #answer: FitAnswer;
  #act: Pick<Ways, "take" | "draw">;

  constructor(answer: FitAnswer, act: Pick<Ways, "take" | "draw">) {
    this.#answer = answer;
    this.#act = act;
  }

  /** How the kit comes out on another book than its own, and what would come out better. */
  fit({ words, offers }: Extract<FitMade, { readonly words: unknown }>, kit: Kit): void {
    holdPage(false);
    this.#answer.say(words, this.#ways(offers, kit, say.fitPanelBetter));
  }

  /** That the page shows the kit's own book. */
  own(): void {
    holdPage(false);
    this.#answer.say([say.fitPanelOwn()]);
  }

  /** Why the kit does not fit, and what would help. */
  misfit({ failure, offers }: Extract<FitMade, { readonly failure: unknown }>, kit: Kit): void {
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

  #ways(offers: FitMade["offers"], { units }: Kit, lead: (told: { count: number }) => string): Ways | undefined {
    return offers?.length ? { lead: lead({ count: offers.length }), offers, units, ...this.#act } : undefined;
  }
}
