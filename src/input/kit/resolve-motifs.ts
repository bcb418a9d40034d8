import { extname } from "node:path";
import leven from "leven";
import type { Level } from "../../core/kit/kit.ts";
import type { Motif, MotifWish } from "../../core/window/motif.ts";
import { SEATS } from "../../core/window/motif-seats.ts";
import * as say from "../../words/messages.ts";
import { eachOf } from "../files/each-of.ts";
import { type FieldPath, ProblemError, problem } from "../files/problem.ts";
import { nameList, shortValue } from "../files/short.ts";
import type { PictureFiles } from "../layers/draw-file.ts";
import { formProblems, sourceKeyOf } from "../layers/source-form.ts";
import { drawMotif } from "./draw-motif.ts";
import { strayLengths } from "./motif-lengths.ts";
import { resolveCard } from "./resolve-card.ts";
import type { StatedMotif } from "./schema-motif.ts";
import { turnMotif } from "./turn-motif.ts";

/** What motifs are made from: the kit's files, the site's shelf, and what is known of the kit. */
export interface MotifSources {
  readonly files: PictureFiles;
  readonly shelf: readonly Motif[];
  readonly levels: readonly Level[];
  /** About how tall the picture is on the book, mm. */
  readonly tall: number;
  readonly hasLight: boolean;
}

/** The motifs of a kit's window as they are to be set, and what does not count in their sources, in sentences. */
export interface ResolvedMotifs {
  readonly motifs: readonly MotifWish[];
  readonly notes: readonly string[];
}

/** Motifs that are not sized in mm are drawn as large as they usually become: such a share of the picture. */
const USUAL_SHARE = 1 / 4;

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
  const { motif: name } = stated;
  const shelf = name === undefined ? undefined : fromShelf(name, [...at, "motif"], sources.shelf);
  const side = sources.tall * USUAL_SHARE;
  const studio = { ...sources, box: { width: side, height: side }, tall: side };
  const drawn = drawMotif(stated, at, studio, shelf);
  const wish = {
    ...turnMotif(drawn, stated, at),
    name: stated.name ?? shelf?.name ?? usualName(stated),
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
    : file.slice(0, -extname(file).length);
}

function fromShelf(name: string, at: FieldPath, shelf: readonly Motif[]): Motif {
  const found = shelf.find((motif) => motif.name === name);
  if (found) return found;
  const names = shelf.map((motif) => motif.name);
  const nearest = names.toSorted((a, b) => leven(a, name) - leven(b, name))[0];
  throw problem(at, {
    given: say.frontGivenText({ value: shortValue(name) }),
    allowed: names.length > 0 ? say.motifOnShelf({ names: nameList(names) }) : say.motifShelfEmpty(),
    remedy: nearest === undefined ? say.motifShelfRemedy() : say.motifWriteName({ name: nearest }),
  });
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
