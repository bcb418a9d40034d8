import { type Near, type Sought, wantsAsked } from "../../core/finder/kit-list.ts";
import type { Prospect } from "../../core/finder/prospect.ts";
import { type Query, soughtRefit } from "../../core/finder/query.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { after } from "../shared/after.ts";
import { loadKitOf } from "../shared/kit-data.ts";
import { LoadError } from "../shared/load-script.ts";
import type { Card, Judged } from "./finder-cards.ts";
import { type Judge, loadIndex, loadJudge } from "./judge-scripts.ts";

/** So many kits are asked for a book before the reader wants more. */
const AT_ONCE = 12;

/** What is asked, and when the answer is not wanted any more. */
export interface Asking {
  readonly query: Query;
  readonly units: UnitSystem;
  /** Is told when kits have to be worked out. */
  readonly working: () => void;
  readonly isOver: () => boolean;
}

/** What is known of the kits for one book: first from their outlines, then from those kits that come into question. */
export class FinderAnswers {
  #cards: readonly Card[];
  #verdicts = new Map<string, Judged>();
  #near = new Map<string, Near>();
  /** The book and units that all this is for. */
  #asked = "";
  /** How many kits may be asked for this book. */
  #most = AT_ONCE;

  constructor(cards: readonly Card[]) {
    this.#cards = cards;
  }

  get verdicts(): ReadonlyMap<string, Judged> {
    return this.#verdicts;
  }

  get near(): ReadonlyMap<string, Near> {
    return this.#near;
  }

  /** Lets all kits be asked for the book that is stated. */
  askAll(): void {
    this.#most = Number.POSITIVE_INFINITY;
  }

  /** Works out what is not known yet, one kit after another so that the page stays alive; false when the answer is not wanted any more. */
  async ask(asking: Asking): Promise<boolean> {
    const { query, units, working, isOver } = asking;
    const asked = JSON.stringify([soughtRefit(query), units]);
    if (asked !== this.#asked) this.#begin(asked);
    if (Object.keys(query.book).length === 0) return true;
    if (this.#near.size === 0 || this.#inQuestion(query).length > 0) working();
    const judge = await loadJudge(this.#cards[0]?.site ?? "").catch(notLoaded);
    if (judge && this.#near.size === 0) await this.#look(judge, asking);
    for (const card of this.#inQuestion(query)) {
      if (isOver()) return false;
      const verdict = await verdictOf(judge, card, query, units);
      if (isOver()) return false;
      this.#verdicts.set(card.slug, verdict);
    }
    return !isOver();
  }

  #begin(asked: string): void {
    this.#asked = asked;
    this.#verdicts = new Map();
    this.#near = new Map();
    this.#most = AT_ONCE;
  }

  /** What the outlines tell: which kits cannot be made, and in which order the others are asked. */
  async #look({ prospectOf, farnessOf }: Judge, { query, units, isOver }: Asking): Promise<void> {
    const index = await loadIndex(this.#cards[0]?.site ?? "");
    const near = new Map<string, Near>();
    for (const { slug } of this.#cards) {
      const outline = index.get(slug);
      if (!outline) continue;
      await after();
      if (isOver()) return;
      const prospect: Prospect = prospectOf({ ...outline, units }, soughtRefit(query));
      near.set(slug, { lies: prospect.kind === "lies", farness: farnessOf(outline, query.book) });
      const telling = { units, levels: outline.levels.map(([name]) => ({ name })) };
      if (prospect.kind === "no") this.#verdicts.set(slug, { ...prospect, telling });
    }
    this.#near = near;
  }

  /** The kits that are to be asked now. */
  #inQuestion(query: Query): Card[] {
    const sought: Sought<Card> = { kits: this.#cards, verdicts: this.#verdicts, near: this.#near, query };
    return wantsAsked(sought, this.#most);
  }
}

/** Judges a kit for a book. A kit that cannot be judged does not keep the others from being judged. */
async function verdictOf(judging: Judge | undefined, card: Card, query: Query, units: UnitSystem): Promise<Judged> {
  const unknown = { kind: "unknown", telling: { units, levels: [] } } as const;
  if (!judging) return { ...unknown, cause: "not-loaded" };
  try {
    const { kit } = await loadKitOf(card.slug, card.site);
    await after();
    return { ...judging.judge({ ...kit, units }, soughtRefit(query)), telling: { units, levels: kit.levels } };
  } catch (error) {
    if (error instanceof LoadError) return { ...unknown, cause: "not-loaded" };
    reportError(error);
    return { ...unknown, cause: "failed" };
  }
}

function notLoaded(error: unknown): undefined {
  if (!(error instanceof LoadError)) throw error;
}
