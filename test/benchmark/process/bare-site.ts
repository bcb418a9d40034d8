import { globSync, linkSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { measure, type Used } from "./measured.ts";

const ROOT = join(import.meta.dirname, "../../..");

/** Eleventy with nothing of ours: every page is a template that is its finished text. */
const CONFIG = `export default function (config) {
  config.addGlobalData("permalink", () => (data) => data.page.filePathStem + ".html");
  return { dir: { input: "pages", output: "made" }, htmlTemplateEngine: false, templateFormats: ["html"] };
}
`;

/** Has bare Eleventy write the pages of a built site. @throws Error where it writes another number of pages */
export async function measureBare(dist: string): Promise<Used> {
  const folder = mkdtempSync(join(tmpdir(), "leaflight-bare-"));
  try {
    const pages = globSync("**/*.html", { cwd: dist });
    for (const page of pages) {
      mkdirSync(dirname(join(folder, "pages", page)), { recursive: true });
      linkSync(join(dist, page), join(folder, "pages", page));
    }
    symlinkSync(join(ROOT, "node_modules"), join(folder, "node_modules"), "junction");
    writeFileSync(join(folder, "eleventy.config.js"), CONFIG);
    writeFileSync(join(folder, "package.json"), '{ "type": "module" }');
    const used = await measure(folder, ["node_modules/@11ty/eleventy/cmd.cjs", "--quiet"]);
    const made = globSync("**/*.html", { cwd: join(folder, "made") }).length;
    if (made !== pages.length) throw new Error(`bare Eleventy wrote ${made} pages of ${pages.length}`);
    return used;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
