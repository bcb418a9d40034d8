import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { makeabilityOf } from "../../core/makeability/makeability.ts";
import { seenBothWays } from "../../core/makeability/silhouette-seen.ts";
import { classSchemaText } from "../../input/class/schema.ts";
import { schemaText } from "../../input/kit/schema.ts";
import { settingsSchemaText } from "../../input/settings/settings.ts";
import { writtenFiles } from "../../output/cut/cut-files.ts";
import type { CutFile } from "../../output/cut/cut-forms.ts";
import { cornerMakeabilityJson, makeabilityJson } from "../../output/data/makeability-json.ts";
import { cornerCsv, patternCsv } from "../../output/data/pattern-csv.ts";
import { cornerJson, patternJson } from "../../output/data/pattern-json.ts";
import { cornerFront } from "../../output/drawing/corner/corner-front.ts";
import { frontPicture } from "../../output/drawing/front/picture.ts";
import type { AnyKitView } from "../../output/views/any-kit-view.ts";
import { drawFront, type FrontPixels, writeCoverImage, writeSmallImages } from "../images/front-images.ts";
import { makeabilityFile } from "./makeability-file.ts";

/** Writes a kit's pattern for programs, and how it can be made. */
export function writeKitFiles(folder: string, view: AnyKitView): void {
  writePatternFiles(folder, view);
  const makeability =
    view.way === "cut"
      ? makeabilityJson(view.kit, makeabilityOf(view))
      : cornerMakeabilityJson(view.kit, seenBothWays(view.kit, view.pattern));
  writeFileSync(makeabilityFile(folder), makeability);
}

/** Draws a kit's front: as it was computed, for the cover of its packet, for the catalogue and for link previews. */
export async function writeKitPictures(folder: string, view: AnyKitView): Promise<void> {
  const front = await writeFronts(folder, view);
  await writeSmallImages(front, { small: join(folder, "small.webp"), social: join(folder, "social.jpg") });
}

/** Writes the schemas of front matters and settings. */
export function writeSchemas(output: string): void {
  mkdirSync(join(output, "schema"), { recursive: true });
  writeFileSync(join(output, "schema", "kit.json"), schemaText());
  writeFileSync(join(output, "schema", "site.json"), settingsSchemaText());
  writeFileSync(join(output, "schema", "class.json"), classSchemaText());
}

/** Writes pattern, front pictures, the cover's picture and cut files of a kit on the book of a seat. */
export async function writeSeatFiles(folder: string, view: AnyKitView, seat: number): Promise<void> {
  writePatternFiles(folder, view);
  writeKitCutFiles(folder, view, seat);
  await writeFronts(folder, view);
}

function writePatternFiles(folder: string, { kit, pattern, findings, supplies, effort }: AnyKitView): void {
  mkdirSync(folder, { recursive: true });
  const json = pattern.corner
    ? cornerJson(kit, pattern, findings, supplies, effort)
    : patternJson(kit, pattern, findings, supplies, effort);
  writeFileSync(join(folder, "pattern.json"), json);
  writeFileSync(join(folder, "pattern.csv"), pattern.corner ? cornerCsv(pattern) : patternCsv(pattern));
}

/** Writes what a cutter reads of a kit, of a `seat` with its number. */
export function writeKitCutFiles(folder: string, { kit, pattern }: AnyKitView, seat?: number): void {
  if (pattern.corner) return;
  writeCutFiles(join(folder, "cut"), writtenFiles(kit, pattern, seat));
}

/** Draws the front by day, lit where there is a light, and for the cover; gives back the finished piece in pixels. */
async function writeFronts(folder: string, { slug, kit, pattern }: AnyKitView): Promise<FrontPixels> {
  mkdirSync(folder, { recursive: true });
  const options = { slug, title: kit.title, mood: "day" } as const;
  const day = pattern.corner ? cornerFront(pattern, options) : frontPicture(pattern, options);
  const lit =
    pattern.corner || !pattern.pocket ? undefined : frontPicture(pattern, { slug, title: kit.title, mood: "lit" });
  writeFileSync(join(folder, "front.svg"), day);
  if (lit) writeFileSync(join(folder, "front-lit.svg"), lit);
  const front = await drawFront(lit ?? day);
  await writeCoverImage(front, join(folder, "cover.jpg"));
  return front;
}

export function writeCutFiles(folder: string, files: readonly CutFile[]): void {
  if (files.length > 0) mkdirSync(folder, { recursive: true });
  for (const file of files) writeFileSync(join(folder, file.name), file.text);
}
