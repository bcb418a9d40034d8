import type { Kit, Level } from "../../core/kit/kit.ts";
import type { LevelMap } from "../../core/picture/level-map.ts";
import type { Story } from "../../core/story/story.ts";
import { rulerStep } from "../../core/units/ruler.ts";
import type { Motif, MotifWish } from "../../core/window/motif.ts";
import * as say from "../../words/messages.ts";
import { supplyNamed, unitNamed } from "../../words/supplies.ts";
import { atPlace } from "../files/at-place.ts";
import { openFolder, pathBelow } from "../files/folders.ts";
import { pageText, readFrontMatter } from "../files/front-matter.ts";
import { KitError } from "../files/message.ts";
import { checkPhotos } from "../files/named-files.ts";
import { type Readings, readEach } from "../files/readings.ts";
import { schemaMessages } from "../files/schema-messages.ts";
import { type Strays, straysIn } from "../files/strays.ts";
import type { YamlFile } from "../files/yaml.ts";
import type { OwnFont } from "../fonts/own-fonts.ts";
import { PictureFiles } from "../layers/draw-file.ts";
import { filesOfPicture, filesOfSource, kitPicture } from "../layers/kit-picture.ts";
import { checkOutline } from "../picture/crowded.ts";
import { readStory } from "../story/read-story.ts";
import { checkFit, shapeOf, statedLastPage } from "./resolve-fit.ts";
import { resolveLevels } from "./resolve-levels.ts";
import { resolveMotifs } from "./resolve-motifs.ts";
import { resolveWindow } from "./resolve-window.ts";
import { type FrontMatter, frontMatter, kitJsonSchema } from "./schema.ts";
import { CUT_SECONDS } from "./schema-supplies.ts";
import { checkVersions } from "./versions.ts";

/** A kit as its folder states it, not yet computed. */
export interface StatedKit {
  readonly kit: Kit;
  /** Its index.md below the project, and where each field stands in it. */
  readonly file: string;
  readonly placeOf: YamlFile["placeOf"];
  /** What the picture holds that does not count, in sentences. */
  readonly pictureNotes: readonly string[];
  /** By what shapes of its drawings can be picked, a text for each file. */
  readonly offers: () => readonly string[];
  readonly story: Story;
  readonly strays: readonly Strays[];
}

/** Reads the folders of kits; one that cannot be read stops none of the others. */
export function readKits(
  folders: readonly string[],
  base: string,
  shelf: readonly Motif[],
  fonts: readonly OwnFont[] = [],
): Readings<StatedKit> {
  return readEach(folders, (folder) => readKit(folder, base, shelf, fonts));
}

/**
 * Reads a kit's folder in the project `base`, where `shelf` are motifs to pick from and `fonts` are those of the settings.
 * @throws KitError with one message for each thing wrong.
 */
export function readKit(
  folder: string,
  base: string,
  shelf: readonly Motif[],
  fonts: readonly OwnFont[] = [],
): StatedKit {
  const { slug, file } = openFolder(folder, base, "kit");
  const text = pageText({ base, file, home: pathBelow(base, folder) });
  const yaml = readFrontMatter(file, text);
  const parsed = frontMatter.safeParse(yaml.value);
  if (!parsed.success) {
    const checked = { file, yaml, schema: kitJsonSchema(), whole: say.checkFieldFrontMatter() };
    throw new KitError(schemaMessages(checked, parsed.error.issues));
  }
  const { data } = parsed;
  return atPlace(file, yaml, () => {
    checkFit(data);
    checkVersions(data.versions);
    checkPhotos(
      { base, folder },
      data.photos.map(({ file: photo }, i) => ({ file: photo, at: ["photos", i, "file"] })),
    );
    const levels = resolveLevels(data);
    const files = new PictureFiles({ base, folder }, fonts);
    const tall = tallOf(data);
    const { map, notes } = kitPicture(files, data.picture, { levels, tall });
    const wished = data.insert?.motifs ?? [];
    const resolved = resolveMotifs(wished, { files, shelf, levels, tall, hasLight: data.light !== undefined });
    const kit = toKit(slug, data, levels, map, resolved.motifs);
    if (kit.insert) checkOutline(map, kit.insert.outline);
    const story = readStory({ base, folder }, file, text);
    const drawn = [...filesOfPicture(data.picture), ...wished.flatMap(filesOfSource)];
    const named = ["index.md", ...drawn, ...kit.photos.map((photo) => photo.file)];
    const strays = straysIn(base, pathBelow(base, folder), [...named, ...story.pictures.map((photo) => photo.file)]);
    return {
      kit,
      file,
      placeOf: yaml.placeOf,
      pictureNotes: [...notes, ...resolved.notes],
      offers: () => files.offers(),
      story,
      strays,
    };
  });
}

/** About how tall the picture is on the book, mm, before it is fitted. */
function tallOf({ fit, book }: FrontMatter): number {
  return fit.height === "solve" ? book.leafHeight : fit.height;
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
