import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import sharp from "sharp";
import type { SiteSettings } from "../../core/site-settings.ts";
import { brandMark } from "../../output/drawing/brand-mark.ts";
import { ICONS, MANIFEST, MARK, manifestText } from "../../output/offline/manifest.ts";

/** What it writes, below the site. */
export const INSTALLABLE: readonly string[] = [MANIFEST, MARK, ...ICONS.map(({ file }) => file)];

/** Manifest and icons. */
export async function writeInstallable(output: string, settings: SiteSettings): Promise<void> {
  writeFileSync(join(output, MANIFEST), manifestText(settings));
  mkdirSync(dirname(join(output, MARK)), { recursive: true });
  writeFileSync(join(output, MARK), brandMark("round"));
  for (const { file, size, shape } of ICONS) {
    const picture = sharp(Buffer.from(brandMark(shape)), { density: (72 * size) / 100 }).resize(size, size);
    writeFileSync(join(output, file), await picture.png({ compressionLevel: 9 }).toBuffer());
  }
}
