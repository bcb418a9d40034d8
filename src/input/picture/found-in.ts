import { rowText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { shortValue } from "../files/short.ts";
import type { SvgPicture } from "../svg/svg-picture.ts";
import { shownShapes } from "./shown-shapes.ts";

/** Something by which shapes of a drawing can be picked. */
export interface Found {
  readonly kind: "fill" | "stroke" | "name" | "id" | "class";
  /** As a selection names it, without `#` or `.`: `#cc3333` of a colour, `hull` of a name, an id or a class. */
  readonly value: string;
  /** Share of the canvas that its shapes show, 0…1. */
  readonly share: number;
}

/** Of very many, these are enough to choose from. */
const MOST = 100;

/** Of each kind, these are told in a message. */
const TOLD = 8;

/**
 * By what the painted shapes of a drawing can be picked, the largest first. Gradients, guides and other furniture of an editor
 * paint nothing and are not among it; an element is told by its name, and by its id where that is all.
 */
export function foundIn(picture: SvgPicture): readonly Found[] {
  const found = new Map<string, { kind: Found["kind"]; value: string; share: number }>();
  const shown = shownShapes(
    picture.shapes.map(({ rule, rings }, i) => ({ rule, rings, level: i + 1 })),
    picture,
  );
  for (const [i, { called, paint, colour }] of picture.shapes.entries()) {
    const marks = new Map<string, Pick<Found, "kind" | "value">>();
    const mark = (kind: Found["kind"], value: string): void => {
      marks.set(`${kind} ${value}`, { kind, value });
    };
    if (colour !== undefined) mark(paint, colour);
    for (const { id, names, classes } of called) {
      const [name] = names;
      if (id !== undefined && name === id) mark("id", id);
      else if (name !== undefined) mark("name", name);
      for (const one of classes) mark("class", one);
    }
    for (const [key, { kind, value }] of marks) {
      const known = found.get(key);
      if (known) known.share += shown[i]!.share;
      else found.set(key, { kind, value, share: shown[i]!.share });
    }
  }
  return [...found.values()].sort((a, b) => b.share - a.share).slice(0, MOST);
}

/** What there is to pick by, in words: `fill #cc3333 (12 %), name "hull" (4 %)`; empty where there is nothing. */
export function foundText(found: readonly Found[]): string {
  const kinds: readonly Found["kind"][] = ["name", "id", "fill", "stroke", "class"];
  const told = kinds.flatMap((kind) => found.filter((one) => one.kind === kind).slice(0, TOLD));
  return rowText(
    told.map((one) => say.selectFound({ kind: one.kind, value: shortValue(one.value), share: percent(one.share) })),
  );
}

/** A share as `12` or `0.4`; the least that is told is 0.1. */
function percent(share: number): number {
  const hundredths = share * 100;
  return hundredths >= 10 ? Math.round(hundredths) : Math.max(0.1, Math.round(hundredths * 10) / 10);
}
