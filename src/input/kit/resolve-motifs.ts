import type { MotifWish } from "../../core/window/motif.ts";
import { SEATS } from "../../core/window/motif-seats.ts";
import * as say from "../../words/messages.ts";
import { eachOf } from "../files/each-of.ts";
import { endingOf } from "../files/photo-kinds.ts";
import { type FieldPath, ProblemError, problem } from "../files/problem.ts";
import { formProblems, sourceKeyOf } from "../layers/source-form.ts";
import type { DrawnMotif } from "./drawn-motif.ts";
import { strayLengths } from "./motif-lengths.ts";
import { resolveCard } from "./resolve-card.ts";
import type { StatedMotif } from "./schema-motif.ts";
import { turnMotif } from "./turn-motif.ts";

/** What motifs are made from: whoever draws one, without its place, and what is known of the kit. */
export interface MotifSources {
  readonly draw: (stated: StatedMotif, at: FieldPath) => DrawnMotif;
  readonly hasLight: boolean;
}

/** The motifs of a kit's window as they are to be set, and what does not count in their sources, in sentences. */
export interface ResolvedMotifs {
  readonly motifs: readonly MotifWish[];
  readonly notes: readonly string[];
}

/** The motifs of a kit's window. @throws ProblemError with all that is wrong */
export function resolveMotifs(stated: readonly StatedMotif[], sources: MotifSources): ResolvedMotifs {
  checkSeats(stated);
  const made = eachOf(stated.map((one, i) => () => motifOf(one, ["insert", "motifs", i], sources)));
  return { motifs: made.map(({ wish }) => wish), notes: [...new Set(made.flatMap(({ notes }) => notes))] };
}

function motifOf(
  stated: StatedMotif,
  at: FieldPath,
  sources: MotifSources,
): { readonly wish: MotifWish; readonly notes: readonly string[] } {
  const coversLight = stated.covers === "light";
  if (coversLight && !sources.hasLight) {
    const advice = { given: say.motifNoLight(), allowed: say.motifLightAllowed(), remedy: say.motifLightRemedy() };
    throw problem([...at, "covers"], advice);
  }
  const wrong = [...formOf(stated, at), ...strayLengths(stated, at)];
  if (wrong.length > 0) throw new ProblemError(wrong);
  const drawn = sources.draw(stated, at);
  const wish = {
    ...turnMotif(drawn, stated, at),
    name: stated.name ?? stated.motif ?? usualName(stated),
    at: stated.at,
    spacers: stated.spacer ?? (coversLight ? 0 : 1),
    card: resolveCard(stated.card, [...at, "card"]),
    coversLight,
  };
  return { wish, notes: drawn.notes };
}

function formOf(stated: StatedMotif, at: FieldPath) {
  const pieces = (["join", "cut"] as const).flatMap((key) =>
    stated[key].flatMap((piece, n) => formProblems(piece, [...at, key, n], "piece")),
  );
  return [...formProblems(stated, at, "motif"), ...pieces];
}

/** What people call a motif whose author does not say it. */
function usualName(stated: StatedMotif): string {
  const { file } = stated;
  return file === undefined
    ? say.motifUsualName({ source: sourceKeyOf(stated) })
    : file.slice(0, file.length - endingOf(file).length);
}

/** Motifs without a place, beyond the seats that the program has for them. @throws ProblemError */
function checkSeats(stated: readonly StatedMotif[]): void {
  const seatless = stated.flatMap(({ at, covers }, i) => (at === undefined && covers === undefined ? [i] : []));
  const first = seatless[SEATS];
  if (first === undefined) return;
  const allowed = say.motifSeatsAllowed({ most: SEATS });
  throw problem(["insert", "motifs", first, "at"], {
    given: say.checkNotGiven(),
    allowed,
    remedy: say.checkAddField({ field: "at" }),
  });
}
