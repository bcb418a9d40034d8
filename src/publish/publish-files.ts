import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { cutFiles } from "../cut/cut-files.ts";
import { frontPicture } from "../drawing/front/picture.ts";
import { schemaText } from "../kit/schema.ts";
import { settingsSchemaText } from "../settings/settings.ts";
import type { KitView } from "../site/kit-view.ts";
import { writePhotos, writeSocialImage } from "./images.ts";
import { patternCsv } from "./pattern-csv.ts";
import { patternJson } from "./pattern-json.ts";

/** Writes each kit's pattern, pictures, photos and cut files beside its page, and the schemas of front matter and settings. */
export async function publishFiles(content: string, output: string, views: readonly KitView[]): Promise<void> {
  for (const { slug, kit, pattern, supplies, effort } of views) {
    const folder = join(output, "kits", slug);
    mkdirSync(folder, { recursive: true });
    writeFileSync(join(folder, "pattern.json"), patternJson(kit, pattern, supplies, effort));
    writeFileSync(join(folder, "pattern.csv"), patternCsv(pattern));
    for (const file of cutFiles(kit, pattern)) {
      mkdirSync(join(folder, "cut"), { recursive: true });
      writeFileSync(join(folder, "cut", file.name), file.text);
    }
    const day = frontPicture(pattern, { slug, title: kit.title, mood: "day" });
    const lit = pattern.pocket && frontPicture(pattern, { slug, title: kit.title, mood: "lit" });
    writeFileSync(join(folder, "front.svg"), day);
    if (lit) writeFileSync(join(folder, "front-lit.svg"), lit);
    await writeSocialImage(lit ?? day, join(folder, "social.png"));
    await writePhotos(join(content, "kits", slug), folder, kit.photos);
  }
  mkdirSync(join(output, "schema"), { recursive: true });
  writeFileSync(join(output, "schema", "kit.json"), schemaText());
  writeFileSync(join(output, "schema", "site.json"), settingsSchemaText());
}
