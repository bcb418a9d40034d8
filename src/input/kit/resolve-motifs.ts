import { extname } from "node:path";
import leven from "leven";
import type { Area } from "../../core/geometry/area.ts";
import type { Motif, MotifWish } from "../../core/window/motif.ts";
import { SEATS } from "../../core/window/motif-seats.ts";
import * as say from "../../words/messages.ts";
import { type KitFolder, pictureText } from "../files/named-files.ts";
import { type FieldPath, problem } from "../files/problem.ts";
import { nameList, shortValue } from "../files/short.ts";
import { areaIn } from "./read-motifs.ts";
import { resolveCard } from "./resolve-card.ts";
import type { StatedMotif } from "./schema-motif.ts";

/** Where motifs come from: the kit's folder, and the site's shelf. */
export interface MotifSources {
  readonly folder: KitFolder;
  readonly shelf: readonly Motif[];
  readonly hasLight: boolean;
}

/** The motifs of a kit's window as they are to be set. @throws ProblemError, KitError about a file */
export function resolveMotifs(stated: readonly StatedMotif[], sources: MotifSources): MotifWish[] {
  checkSeats(stated);
  return stated.map((one, i) => motifOf(one, ["insert", "motifs", i], sources));
}

function motifOf(stated: StatedMotif, at: FieldPath, sources: MotifSources): MotifWish {
  const coversLight = stated.covers === "light";
  if (coversLight && !sources.hasLight) {
    const advice = { given: say.motifNoLight(), allowed: say.motifLightAllowed(), remedy: say.motifLightRemedy() };
    throw problem([...at, "covers"], advice);
  }
  const { name, area } = sourceOf(stated, at, sources);
  return {
    name: stated.name ?? name,
    area: turned(area, stated),
    at: stated.at,
    width: stated.width,
    height: stated.height,
    spacers: stated.spacer ?? (coversLight ? 0 : 1),
    card: resolveCard(stated.card, [...at, "card"]),
    coversLight,
  };
}

/** The silhouette that a motif is made of: from the shelf, or from a file in the kit's folder. */
function sourceOf({ motif, file }: StatedMotif, at: FieldPath, { folder, shelf }: MotifSources): Motif {
  if ((motif === undefined) === (file === undefined)) {
    const given = motif === undefined ? say.motifNoSource() : say.motifTwoSources();
    throw problem(at, { given, allowed: say.motifSourceAllowed(), remedy: say.motifSourceRemedy() });
  }
  if (motif !== undefined) return fromShelf(motif, [...at, "motif"], shelf);
  const source = pictureText(folder, file!, [...at, "file"]);
  return { name: file!.slice(0, -extname(file!).length), area: areaIn(source.file, source.text) };
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

/** An area mirrored left to right, and then turned clockwise. */
function turned(area: Area, { turn, mirror }: Pick<StatedMotif, "turn" | "mirror">): Area {
  if (turn === 0 && !mirror) return area;
  const angle = (turn / 180) * Math.PI;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const rings = area.map((ring) =>
    ring.map(([x, y]) => {
      const across = mirror ? -x : x;
      return [across * cos - y * sin, across * sin + y * cos] as const;
    }),
  );
  return mirror ? rings.map((ring) => ring.toReversed()) : rings;
}
