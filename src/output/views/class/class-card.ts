import type { KitClass } from "../../../core/class/kit-class.ts";
import type { ClassView } from "./class-view.ts";

/** What is told of a class beside its own pages. */
export type ClassFacts = Pick<
  KitClass,
  "slug" | "title" | "summary" | "date" | "announced" | "place" | "state" | "paper"
>;

/** What pages beside a class's own tell of it. */
export interface ClassCard {
  readonly slug: string;
  readonly plan: ClassFacts;
  readonly date: string;
  /** Numbers of its seats, and of those whose book fits. */
  readonly seats: readonly number[];
  readonly fitting: readonly number[];
  /** Names of its merged cut sheets. */
  readonly sheets: readonly string[];
}

export function classCard({ slug, plan, date, seats, sheets }: ClassView): ClassCard {
  const { title, summary, announced, place, state, paper } = plan;
  return {
    slug,
    plan: { slug, title, summary, date: plan.date, announced, place, state, paper },
    date,
    seats: seats.map(({ number }) => number),
    fitting: seats.flatMap(({ number, view }) => (view ? [number] : [])),
    sheets: sheets.map(({ name }) => name),
  };
}
