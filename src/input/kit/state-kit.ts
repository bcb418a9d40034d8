import type { Kit, Level } from "../../core/kit/kit.ts";
import type { LevelMap } from "../../core/picture/level-map.ts";
import { rulerStep } from "../../core/units/ruler.ts";
import type { MotifWish } from "../../core/window/motif.ts";
import * as say from "../../words/messages.ts";
import { supplyNamed, unitNamed } from "../../words/supplies.ts";
import { atPlace } from "../files/at-place.ts";
import { readFrontMatter } from "../files/front-matter.ts";
import { KitError } from "../files/message.ts";
import { schemaMessages } from "../files/schema-messages.ts";
import type { YamlFile } from "../files/yaml.ts";
import { checkOutline } from "../picture/crowded.ts";
import type { KitParts } from "./kit-parts.ts";
import { resolveCorner } from "./resolve-corner.ts";
import { checkFit, shapeOf, statedLastPage } from "./resolve-fit.ts";
import { resolveLevels } from "./resolve-levels.ts";
import { resolveMotifs } from "./resolve-motifs.ts";
import { resolveWindow } from "./resolve-window.ts";
import { type FrontMatter, frontMatter, kitJsonSchema } from "./schema.ts";
import { CUT_SECONDS } from "./schema-supplies.ts";
import { tallOf } from "./tall-of.ts";
import { checkVersions } from "./versions.ts";

/**
 * The reader of kits without files: from the text of an index.md, and what its files draw, to the kit. It runs in pages as
 * well as in Node, so that whatever shows a kit reads it in the same way: `kitText` first, then `stateKit`.
 */

/** The text of a kit's index.md by its schema, and where each field stands in it. */
export interface KitText {
  readonly slug: string;
  /** Its index.md below the project. */
  readonly file: string;
  readonly data: FrontMatter;
  readonly yaml: YamlFile;
}

/** Reads the text of a kit's index.md, by its schema alone. @throws KitError with one message for each thing wrong */
export function kitText(slug: string, file: string, text: string): KitText {
  const yaml = readFrontMatter(file, text);
  const parsed = frontMatter.safeParse(yaml.value);
  if (parsed.success) return { slug, file, data: parsed.data, yaml };
  const checked = { file, yaml, schema: kitJsonSchema(), whole: say.checkFieldFrontMatter() };
  throw new KitError(schemaMessages(checked, parsed.error.issues));
}

/** The kit that a text states, and what its drawings hold that does not count, in sentences. @throws KitError */
export function stateKit(
  { slug, file, data, yaml }: KitText,
  parts: KitParts,
): { readonly kit: Kit; readonly pictureNotes: readonly string[] } {
  return atPlace(file, yaml, () => {
    checkFit(data);
    checkVersions(data.versions);
    parts.checkPhotos(data.photos.map(({ file: photo }, i) => ({ file: photo, at: ["photos", i, "file"] })));
    const levels = resolveLevels(data);
    const of = { levels, tall: tallOf(data) };
    const { map, notes } = parts.picture(data.picture, of);
    const resolved = resolveMotifs(data.insert?.motifs ?? [], {
      draw: (stated, at) => parts.motif(stated, at, of),
      hasLight: data.light !== undefined,
    });
    const kit = toKit(slug, data, levels, map, resolved.motifs);
    if (kit.insert) checkOutline(map, kit.insert.outline);
    return { kit, pictureNotes: [...notes, ...resolved.notes] };
  });
}

function toKit(
  slug: string,
  data: FrontMatter,
  levels: readonly Level[],
  picture: LevelMap,
  motifs: readonly MotifWish[],
): Kit {
  const { book, fit } = data;
  return {
    slug,
    title: data.title,
    summary: data.summary,
    units: data.units,
    versions: data.versions.map((one) => ({ ...one, note: one.note })),
    licence: data.licence && { ...data.licence, url: data.licence.url },
    links: data.links.map((link) => ({ ...link, host: new URL(link.url).host })),
    credit: data.credit && { ...data.credit, url: data.credit.url },
    levels,
    gaugeLines: data.gauge?.lines ?? levels.map((level) => level.depth),
    gaugeTile: data.gauge?.tile,
    book: { ...book, lastPage: statedLastPage(book) },
    fit: {
      borderLeaves: fit.borderLeaves,
      shape: shapeOf(fit),
      head: fit.head,
      view: fit.view,
      spine: fit.spine,
      markStep: fit.markStep ?? rulerStep(data.units, "fine"),
      leastTab: fit.leastTab,
      foldStyle: fit.foldStyle,
      corner: resolveCorner(fit, levels),
      cutWith: fit.cutWith,
      tackWith: fit.tackWith,
      gutterClearance: fit.gutterClearance,
      flapBulk: fit.flapBulk,
      batch: fit.batch,
      lostLeaves: fit.lostLeaves,
    },
    ...resolveWindow(data, levels),
    motifs,
    waste: data.waste,
    prices: data.prices,
    currency: data.currency ?? "",
    rates: { ...data.rates, cut: data.rates.cut ?? CUT_SECONDS[fit.cutWith] },
    drying: data.drying,
    supplies: data.supplies.map((supply) => ({
      ...supply,
      id: supplyNamed(supply.item),
      unitId: unitNamed(supply.unit),
      price: supply.price,
    })),
    picture,
    photos: data.photos,
  };
}
