import { describe, expect, it } from "vitest";
import { siteSettings } from "../../../src/input/settings/settings.ts";
import { brandMark } from "../../../src/output/drawing/brand-mark.ts";
import { ICONS, manifestText } from "../../../src/output/offline/manifest.ts";
import { type KitList, listSite, type SiteFile } from "../../../src/output/offline/site-list.ts";

const file = (path: string, name = `${path.length}`): SiteFile => ({ path, name, bytes: () => 1000 });
/** A name that shows what it names, so that lists can be compared. */
const nameOf = (text: string): string => `<${text}>`;

const FILES = [
  "index.html",
  "offline.html",
  "sw.js",
  "assets/scripts/kit.js",
  "assets/fonts/literata.woff2",
  "assets/fonts/source-sans-3-400.woff2",
  "assets/fonts/source-sans-3-greek-ext.woff2",
  "assets/fonts/source-sans-3-cyrillic-400.woff2",
  "assets/fonts/own-1.ttf",
  "schema/kit.json",
  "guide/keys/index.html",
  "kits/gull/index.html",
  "kits/gull/kit-data.js",
  "kits/gull/front.svg",
  "kits/gull/social.jpg",
  "kits/gull/offline.json",
  "kits/gull/bench/index.html",
  "kits/gull/cut/door-mm.svg",
  "kits/gull/photos/a-480.webp",
  "kits/gull/photos/a-960.webp",
  "kits/gull/small.webp",
  "kits/gull/pattern.json",
  "kits/gull/photos/a-480.jpg",
  "kits/gull/packet-a4.pdf",
  "kits/moon/front-lit.svg",
  "kits/moon/small.webp",
  "assets/scripts/round-view.js",
  "classes/evening/index.html",
  "private/index.html",
  "private/classes/evening/teacher.pdf",
  "private/classes/evening/cut/card-a4-1-mm.svg",
  "classes/evening/seat-3/index.html",
  "classes/evening/seat-3/front.svg",
  "classes/evening/seat-3/packet/index.html",
].map((path) => file(path));

describe("listSite(files, nameOf)", () => {
  const { site, kits } = listSite(FILES, nameOf);
  const gull = JSON.parse(kits.gull!) as KitList;

  it("keeps as the shell the kits' pictures and what belongs to no kit, without the worker and what only editors read", () => {
    expect(Object.keys(site.shell)).toEqual([
      "assets/fonts/literata.woff2",
      "assets/scripts/kit.js",
      "index.html",
      "kits/gull/small.webp",
      "kits/moon/small.webp",
      "offline.html",
    ]);
  });

  it("keeps of kits what the catalogue loads, of classes the pages with their pictures, and the guide", () => {
    expect(Object.keys(site.seen)).toEqual([
      "assets/fonts/own-1.ttf",
      "assets/fonts/source-sans-3-400.woff2",
      "assets/fonts/source-sans-3-cyrillic-400.woff2",
      "assets/fonts/source-sans-3-greek-ext.woff2",
      "assets/scripts/round-view.js",
      "classes/evening/index.html",
      "classes/evening/seat-3/front.svg",
      "classes/evening/seat-3/index.html",
      "guide/keys/index.html",
      "kits/gull/kit-data.js",
    ]);
  });

  it("keeps as many of the kits' pictures with the shell as find room, and the others once they were seen", () => {
    // Five other files of the shell; 700,000 bytes are for all.
    const heavy = FILES.map((one) => (one.path.endsWith("small.webp") ? { ...one, bytes: () => 400_000 } : one));
    const { shell, seen } = listSite(heavy, nameOf).site;
    expect(Object.keys(shell)).toContain("kits/gull/small.webp");
    expect(Object.keys(shell)).not.toContain("kits/moon/small.webp");
    expect(Object.keys(seen)).toContain("kits/moon/small.webp");
  });

  it("lists by itself what a kit is chosen and worked by, and without previews what is kept when it is asked for", () => {
    expect(Object.keys(gull.files)).toEqual([
      "bench/index.html",
      "front.svg",
      "index.html",
      "kit-data.js",
      "photos/a-480.webp",
    ]);
    expect(Object.keys(gull.rest)).toEqual(["cut/door-mm.svg", "packet-a4.pdf", "pattern.json", "photos/a-960.webp"]);
  });

  it("keeps what packets and the view from all sides need with everything of a kit, and once it was seen", () => {
    expect(Object.keys(site.asked)).toEqual(["assets/fonts/source-sans-3-400.woff2", "assets/scripts/round-view.js"]);
  });

  it("names each kit's list by its contents", () => {
    expect(site.kits).toEqual({ gull: nameOf(kits.gull!), moon: nameOf(kits.moon!) });
  });

  it("is the same for the same files in another order", () => {
    expect(listSite([...FILES].reverse(), nameOf)).toEqual({ site, kits });
  });

  it.each(
    FILES.filter(
      ({ path }) => !/sw\.js|schema|private|social|offline\.json|\.jpg|classes.*(pdf|cut|packet)/.test(path),
    ),
  )("is another version when $path changes", ({ path }) => {
    const changed = FILES.map((one) => (one.path === path ? file(path, "other") : one));
    expect(listSite(changed, nameOf).site.version).not.toBe(site.version);
  });

  it("is no other version when its own files change", () => {
    const changed = FILES.map((one) => (/sw\.js|offline\.json/.test(one.path) ? file(one.path, "other") : one));
    expect(listSite(changed, nameOf).site.version).toBe(site.version);
  });
});

describe("manifestText()", () => {
  const manifest = JSON.parse(manifestText(siteSettings.parse({ title: "Harbour folds" })));

  // W3C Web Application Manifest: addresses are resolved against the manifest's own.
  it("has addresses that hold under any folder", () => {
    const addresses = [manifest.start_url, manifest.scope, ...manifest.icons.map((icon: { src: string }) => icon.src)];
    for (const address of addresses) expect(address).not.toMatch(/^\/|:/);
    expect(new URL(manifest.scope, "https://host/a/b/manifest.webmanifest").pathname).toBe("/a/b/");
  });

  it("has an icon of 192, one of 512 and one for masks", () => {
    expect(manifest.icons.map((icon: { sizes: string; purpose: string }) => `${icon.sizes} ${icon.purpose}`)).toEqual([
      "192x192 any",
      "512x512 any",
      "512x512 maskable",
    ]);
    expect(ICONS).toHaveLength(3);
  });
});

describe("brandMark(shape)", () => {
  // W3C Web Application Manifest, safe zone: a circle around the middle with a radius of 40 % of the width.
  it("keeps the lamp of the masked icon inside the safe zone", () => {
    const circles = [...brandMark("full").matchAll(/<circle cx="(\S+)" cy="(\S+)" r="(\S+)"/g)];
    expect(circles.length).toBe(2);
    for (const [, x, y, r] of circles)
      expect(Math.hypot(Number(x) - 50, Number(y) - 50) + Number(r)).toBeLessThanOrEqual(40);
  });
});
