import { frontPicture } from "../../../src/output/drawing/front/picture.ts";
import type { Mood } from "../../../src/output/drawing/front/tone.ts";
import { galleryKit, type KitName, LIT } from "../kits.ts";
import type { Scene } from "../scene.ts";

const BY_DAY: readonly KitName[] = ["gull", "tide", "small", "small-along", "small-lost", "tall", "plate"];

/** The finished book from the front. */
export const front: readonly Scene[] = [
  ...BY_DAY.map((kit) => picture(kit, "day")),
  ...LIT.map((kit) => picture(kit, "lit")),
  picture("tall-window", "lit"),
];

function picture(name: KitName, mood: Mood): Scene {
  return {
    room: "front",
    name: `${name}-${mood}`,
    of: frontPicture,
    draw: () => {
      const { kit, pattern } = galleryKit(name);
      return frontPicture(pattern, { slug: kit.slug, title: kit.title, mood });
    },
  };
}
