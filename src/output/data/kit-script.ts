import type { Area } from "../../core/geometry/area.ts";
import type { Kit } from "../../core/kit/kit.ts";
import type { Caution } from "../../core/plan/caution.ts";
import { packRings, unpackRings } from "./packed-rings.ts";

/** What a page needs to fit a kit to another book. */
interface KitData {
  readonly kit: Kit;
  readonly cautions: readonly Caution[];
}

/**
 * A classic script that hands a kit's data to pages: unlike a fetch, it also loads from the disk. Outlines are nearly all of it
 * and are packed; the script unpacks them, so that its readers need not know.
 */
export function kitScript({ kit, cautions }: KitData): string {
  const shapes = kit.picture.shapes.map((shape) => ({ ...shape, rings: packRings(shape.rings) }));
  const motifs = kit.motifs.map((motif) => ({ ...motif, area: packRings(motif.area) }));
  const packed = JSON.stringify({ kit: { ...kit, motifs, picture: { ...kit.picture, shapes } }, cautions });
  return `(self.leaflightKits??={})[${JSON.stringify(kit.slug)}]=self.leaflightKit=(${unpackKit})(${packed},${unpackRings});\n`;
}

/** As the data was packed, outlines in the places of packed ones. */
interface PackedKit {
  readonly kit: {
    readonly picture: { readonly shapes: { rings: Area }[] };
    readonly motifs: { area: Area }[];
  };
}

/** Written into the script as it stands here. */
function unpackKit(data: PackedKit, unpack: typeof unpackRings): PackedKit {
  for (const shape of data.kit.picture.shapes) shape.rings = unpack(shape.rings);
  for (const motif of data.kit.motifs) motif.area = unpack(motif.area);
  return data;
}
