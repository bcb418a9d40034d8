import { Gathering } from "../library/gathering.ts";
import { factsKey, readFacts, type SiteFacts } from "../library/site-facts.ts";

/** What all parts of a site share, read again only when something of it changed. */
export class HeldFacts {
  #held: { readonly facts: SiteFacts; readonly gathered: Gathering } | undefined;

  /** As `readFacts`: what is broken in it is told each time. */
  readonly read: typeof readFacts = (base, gathering, store) => {
    if (this.#held?.facts.key !== factsKey(base)) {
      const gathered = new Gathering("leave out");
      this.#held = { facts: readFacts(base, gathered, store), gathered };
    }
    const { facts, gathered } = this.#held!;
    gathering.all({ made: [], messages: gathered.messages });
    return facts;
  };
}
