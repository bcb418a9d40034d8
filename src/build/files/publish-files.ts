import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { makeabilityOf } from "../../core/makeability/makeability.ts";
import { classSchemaText } from "../../input/class/schema.ts";
import { schemaText } from "../../input/kit/schema.ts";
import { settingsSchemaText } from "../../input/settings/settings.ts";
import { writtenFiles } from "../../output/cut/cut-files.ts";
import type { CutFile } from "../../output/cut/cut-forms.ts";
import { makeabilityJson } from "../../output/data/makeability-json.ts";
import { patternCsv } from "../../output/data/pattern-csv.ts";
import { patternJson } from "../../output/data/pattern-json.ts";
import { frontPicture } from "../../output/drawing/front/picture.ts";
import type { KitView } from "../../output/views/kit-view.ts";
import { drawFront, type FrontPixels, writeCoverImage, writeSmallImages } from "../images/front-images.ts";

/** Writes each kit's pattern, pictures and cut files beside its page, and the schemas of front matters and settings. */
export async function publishFiles(output: string, views: readonly KitView[]): Promise<void> {
  for (const view of views) {
    const { slug, kit } = view;
    const folder = join(output, "kits", slug);
    const front = await writePatternFiles(folder, view);
    writeFileSync(join(folder, "makeability.json"), makeabilityJson(kit, makeabilityOf(view)));
    await writeSmallImages(front, { small: join(folder, "small.webp"), social: join(folder, "social.jpg") });
  }
  mkdirSync(join(output, "schema"), { recursive: true });
  writeFileSync(join(output, "schema", "kit.json"), schemaText());
  writeFileSync(join(output, "schema", "site.json"), settingsSchemaText());
  writeFileSync(join(output, "schema", "class.json"), classSchemaText());
}

/** Writes pattern, front pictures, the cover's picture and cut files of a kit on a book, of a `seat` with its number; the finished piece in pixels. */
export async function writePatternFiles(
  folder: string,
  { slug, kit, pattern, findings, supplies, effort }: KitView,
  seat?: number,
): Promise<FrontPixels> {
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, "pattern.json"), patternJson(kit, pattern, findings, supplies, effort));
  writeFileSync(join(folder, "pattern.csv"), patternCsv(pattern));
  writeCutFiles(join(folder, "cut"), writtenFiles(kit, pattern, seat));
  const day = frontPicture(pattern, { slug, title: kit.title, mood: "day" });
  const lit = pattern.pocket && frontPicture(pattern, { slug, title: kit.title, mood: "lit" });
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
