import { createHash } from "node:crypto";
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import sharp from "sharp";
import type { SiteSettings } from "../../core/site-settings.ts";
import { brandMark } from "../../output/drawing/brand-mark.ts";
import { ICONS, MANIFEST, MARK, manifestText } from "../../output/offline/manifest.ts";
import { KIT_LIST, listSite, type SiteFile, type SiteList, WORKER } from "../../output/offline/site-list.ts";
import type { KitView } from "../../output/views/kit-view.ts";
import { CLASSIC_SCRIPT } from "../bundle/classic-script.ts";

/** Letters of a contents' name: the beginning of its SHA-256. The worker compares as many. */
const NAME_LENGTH = 16;

/** Lets a built site work without network. The last step of a build: it lists every file. */
export async function writeOffline(output: string, views: readonly Pick<KitView, "slug" | "kit">[]): Promise<SiteList> {
  const editions = views.flatMap(({ slug, kit }) =>
    kit.versions.slice(0, 1).map(({ version, date }) => [slug, { version, date }]),
  );
  const { site, kits } = listSite(filesOf(output), nameOf, Object.fromEntries(editions));
  for (const [slug, list] of Object.entries(kits)) writeFileSync(join(output, "kits", slug, KIT_LIST), list);
  await writeWorker(output, site);
  return site;
}

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

/** While serving, pages change without a list: a worker that an earlier build left there takes itself away. */
export function retireWorker(output: string): void {
  const lines = [
    'self.addEventListener("install", () => self.skipWaiting());',
    'self.addEventListener("activate", (event) => event.waitUntil(self.registration.unregister()));',
  ];
  writeFileSync(join(output, WORKER), `${lines.join("\n")}\n`);
}

async function writeWorker(output: string, site: SiteList): Promise<void> {
  await build({
    entryPoints: { [WORKER.replace(/\.js$/, "")]: join(import.meta.dirname, "../../page/offline/offline-worker.ts") },
    outdir: output,
    ...CLASSIC_SCRIPT,
    define: { SITE: JSON.stringify(site) },
  });
}

function filesOf(output: string): SiteFile[] {
  return readdirSync(output, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((file) => {
      const contents = readFileSync(file);
      const path = relative(output, file).split(sep).join("/");
      return { path, name: nameOf(contents), bytes: bytesKept(path, contents) };
    });
}

/** How many bytes a file takes on a device, which packs what is text. */
function bytesKept(path: string, contents: Buffer): number {
  return /\.(html|css|js|json|svg|csv|xml|webmanifest|txt)$/.test(path) ? gzipSync(contents).length : contents.length;
}

function nameOf(contents: string | Buffer): string {
  return createHash("sha256").update(contents).digest("hex").slice(0, NAME_LENGTH);
}
