import { makeabilityOf } from "../../../src/core/makeability/makeability.ts";
import { bookPicture } from "../../../src/output/drawing/front/book-picture.ts";
import { makeabilityFigure } from "../../../src/output/drawing/front/makeability.ts";
import { frontPicture } from "../../../src/output/drawing/front/picture.ts";
import type { Mood } from "../../../src/output/drawing/front/tone.ts";
import { markSwatch } from "../../../src/output/drawing/front/trouble-marks.ts";
import { galleryKit, type KitName, LIT } from "../kits.ts";
import { DIAGRAM, figureIn, type Scene } from "../scene.ts";

/** Room of a mark beside a trouble of the list, mm. */
const SWATCH = { width: 14, height: 10 };

/** With each kind of mark: hatched, cross-hatched, boxes, dashed boxes, brackets; from right to left; walking round. */
const LOOKED_AT: readonly KitName[] = ["moon", "tide", "tall", "small-along"];

const BY_DAY: readonly KitName[] = ["gull", "tide", "small", "small-along", "small-lost", "tall", "plate"];

/** The finished book from the front. */
export const front: readonly Scene[] = [
  ...BY_DAY.map((kit) => picture(kit, "day")),
  ...LIT.map((kit) => picture(kit, "lit")),
  picture("tall-window", "lit"),
  ...LOOKED_AT.map(looked),
  swatch("hidden"),
  swatch("out-of-reach"),
  swatch("slivers"),
  swatch("narrow"),
  swatch("many-cuts"),
];

function picture(name: KitName, mood: Mood): Scene {
  const of = mood === "day" ? bookPicture : frontPicture;
  return {
    room: "front",
    name: `${name}-${mood}`,
    of,
    draw: () => {
      const { kit, pattern } = galleryKit(name);
      return of(pattern, { slug: kit.slug, title: kit.title, mood });
    },
  };
}

function looked(name: KitName): Scene {
  return {
    room: "front",
    name: `${name}-looked-at`,
    of: makeabilityFigure,
    draw: () => figureIn(DIAGRAM, makeabilityFigure(galleryKit(name).kit, makeabilityOf(galleryKit(name)))),
  };
}

function swatch(kind: Parameters<typeof markSwatch>[0]): Scene {
  return {
    room: "front",
    name: `mark-${kind}`,
    of: markSwatch,
    draw: () => figureIn(SWATCH, { svg: markSwatch(kind), label: "" }),
  };
}
