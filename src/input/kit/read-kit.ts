import { existsSync, readdirSync, readFileSync, realpathSync, statSync } from "node:fs";
import { extname, join, relative, resolve, sep } from "node:path";
import type { Doubt } from "../../core/findings/doubt.ts";
import type { Kit, Level } from "../../core/kit/kit.ts";
import { computePattern } from "../../core/pattern/compute.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import type { LevelMap } from "../../core/picture/level-map.ts";
import { Problem } from "../../core/problem.ts";
import { MM_PER_INCH } from "../../core/units/length.ts";
import type { Motif } from "../../core/window/motif.ts";
import { authorFailure } from "../../words/findings/author-failure.ts";
import { supplyNamed, unitNamed } from "../../words/supplies.ts";
import { atPlace } from "../files/at-place.ts";
import { openFolder, readFolders } from "../files/folders.ts";
import { readFrontMatter } from "../files/front-matter.ts";
import { KitError } from "../files/message.ts";
import { schemaMessages } from "../files/schema-messages.ts";
import { PictureError, readSvg } from "../svg/read-svg.ts";
import { assignLevels } from "./assign-levels.ts";
import { readMotifs } from "./read-motifs.ts";
import { checkWishes, lastPageOf, resolveLevels, windowOf } from "./resolve.ts";
import { resolveShape } from "./resolve-shape.ts";
import { type FrontMatter, frontMatter, kitJsonSchema } from "./schema.ts";
import { checkVersions } from "./versions.ts";

/** A kit folder, read and computed. */
export interface KitFolder {
  readonly kit: Kit;
  readonly pattern: Pattern;
  readonly findings: readonly Doubt[];
  /** The author's own telling, Markdown. */
  readonly body: string;
  /** What the picture holds that does not count, in sentences. */
  readonly pictureNotes: readonly string[];
}

/**
 * Reads every folder under `root` (…/kits) and computes its pattern.
 * @throws KitError with the messages of all kits that cannot be built.
 */
export function readKits(root: string, base: string): KitFolder[] {
  const kits = readFolders(root, (folder) => readKit(folder, base));
  return kits.sort((a, b) => a.kit.title.localeCompare(b.kit.title, "en"));
}

/** @throws KitError with one message for each thing wrong. */
export function readKit(folder: string, base: string): KitFolder {
  const { slug, file } = openFolder(folder, base, "kit", "a kit folder holds index.md and its picture");
  const front = readFrontMatter(file, readFileSync(join(folder, "index.md"), "utf8"));
  const parsed = frontMatter.safeParse(front.value);
  if (!parsed.success) throw new KitError(schemaMessages(file, front, parsed.error.issues, kitJsonSchema()));
  return atPlace(file, front, () => {
    checkWishes(parsed.data);
    checkVersions(parsed.data.versions);
    checkPhotos(folder, parsed.data);
    const levels = resolveLevels(parsed.data);
    const motifs = readMotifs(join(base, "content/motifs"));
    const { map, notes } = readPicture(folder, base, parsed.data, levels);
    const kit = toKit(slug, parsed.data, levels, map, motifs);
    return { kit, ...patternOf(kit), body: front.body, pictureNotes: notes };
  });
}

/** @throws Problem where the kit's own book does not carry it */
function patternOf(kit: Kit): Pick<KitFolder, "pattern" | "findings"> {
  const result = computePattern(kit);
  if (result.fits) return result;
  const { path, ...texts } = authorFailure(result.finding, kit);
  throw new Problem(path, texts);
}

function readPicture(
  folder: string,
  base: string,
  data: FrontMatter,
  levels: readonly Level[],
): { map: LevelMap; notes: string[] } {
  const path = pictureFile(folder, data.picture.file);
  const file = relative(base, path).split(sep).join("/");
  try {
    const picture = readSvg(readFileSync(path, "utf8"));
    return {
      map: assignLevels(picture, data.picture.levels, levels, file),
      notes: picture.notes.map((note) => `${file}:${note.line}: ${note.message}`),
    };
  } catch (error) {
    if (!(error instanceof PictureError)) throw error;
    throw new KitError([
      {
        file,
        line: error.line,
        column: undefined,
        field: "picture",
        given: error.message,
        allowed: "filled shapes, paths, groups and use, as the README's reference lists them",
        remedy: "change this element in your drawing program and save again",
      },
    ]);
  }
}

function pictureFile(folder: string, name: string): string {
  const path = fileInside(folder, name, "picture.file", [".svg"], "copy the picture beside index.md");
  if (extname(path).toLowerCase() !== ".svg") {
    throw new Problem("picture.file", {
      given: `"${name}" is not an SVG file`,
      allowed: "an SVG picture (.svg)",
      remedy: "draw the levels as filled shapes and save them as SVG",
    });
  }
  return path;
}

const PHOTO_KINDS = [".jpg", ".jpeg", ".png", ".webp", ".avif"];

function checkPhotos(folder: string, data: FrontMatter): void {
  for (const [i, photo] of data.photos.entries()) {
    const path = fileInside(folder, photo.file, `photos.${i}.file`, PHOTO_KINDS, "copy the photo into the kit folder");
    if (PHOTO_KINDS.includes(extname(path).toLowerCase())) continue;
    throw new Problem(`photos.${i}.file`, {
      given: `"${photo.file}" is not a photo`,
      allowed: PHOTO_KINDS.join(", "),
      remedy: "save it as one of these",
    });
  }
}

/** A file that the kit names: there, and inside its folder also behind links. @throws Problem */
function fileInside(folder: string, name: string, field: string, kinds: readonly string[], remedy: string): string {
  const path = resolve(folder, name);
  const problem = (given: string, allowed: string, what: string): Problem =>
    new Problem(field, { given, allowed, remedy: what });
  if (!path.startsWith(resolve(folder) + sep))
    throw problem(`"${name}" is outside the kit folder`, "a file in the kit folder", remedy);
  if (!existsSync(path)) {
    const found = readdirSync(folder).filter((entry) => kinds.includes(extname(entry).toLowerCase()));
    throw problem(
      `"${name}" is not there`,
      `a file in the kit folder${found.length > 0 ? ` (it holds ${found.join(", ")})` : ""}`,
      "correct the name or add the file",
    );
  }
  if (!statSync(path).isFile())
    throw problem(`"${name}" is a folder`, "a file in the kit folder", "name the file itself");
  if (!realpathSync(path).startsWith(realpathSync(folder) + sep))
    throw problem(`"${name}" is a link to a file outside the kit folder`, "a file in the kit folder", remedy);
  return path;
}

function toKit(
  slug: string,
  data: FrontMatter,
  levels: readonly Level[],
  picture: LevelMap,
  motifs: readonly Motif[],
): Kit {
  const { book, fit } = data;
  return {
    slug,
    title: data.title,
    summary: data.summary,
    units: data.units,
    versions: data.versions.map((one) => ({ ...one, note: one.note })),
    licence: data.licence && { ...data.licence, url: data.licence.url },
    links: data.links,
    credit: data.credit && { ...data.credit, url: data.credit.url },
    levels,
    gaugeLines: data.gauge?.lines ?? levels.map((level) => level.depth),
    gaugeTile: data.gauge?.tile,
    book: { ...book, lastPage: lastPageOf(book) },
    fit: {
      ...fit,
      head: fit.head,
      shape: resolveShape(fit),
      markStep: fit.markStep ?? (data.units === "mm" ? 0.5 : MM_PER_INCH / 32),
    },
    ...windowOf(data, levels),
    motifs,
    waste: data.waste,
    prices: data.prices,
    currency: data.currency ?? "",
    rates: data.rates,
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
