import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import "../english.ts";
import { accept, compared, GOLDENS, isChanged, leaveBeside, strayGoldens } from "./golden.ts";
import { galleryPage } from "./page.ts";
import { pathOf } from "./scene.ts";
import { SCENES } from "./scenes.ts";

/**
 * Draws the gallery into one page (`npm run gallery`); with names, only drawings whose `room/name` contains one of them.
 * `--accept` makes what is drawn now the goldens, and takes out goldens that nothing draws.
 */
const PAGE = join(import.meta.dirname, "../../.cache/gallery/index.html");

const accepts = process.argv.includes("--accept");
const names = process.argv.slice(2).filter((word) => word !== "--accept");
const chosen = SCENES.filter((scene) => names.length === 0 || names.some((name) => pathOf(scene).includes(name)));

if (chosen.length === 0) {
  console.error(`No drawing has a name with ${names.join(" or ")} in it.`);
  process.exitCode = 1;
} else show();

function show(): void {
  const all = chosen.map((scene) => compared(scene));
  const changed = all.filter(isChanged);
  mkdirSync(join(PAGE, ".."), { recursive: true });
  writeFileSync(PAGE, galleryPage(all));
  for (const one of all) (accepts ? accept : leaveBeside)(one);
  const stray = names.length === 0 ? strayGoldens(SCENES) : [];
  if (accepts) for (const path of stray) rmSync(join(GOLDENS, `${path}.svg`));
  console.log(`${all.length} drawings, ${changed.length} ${accepts ? "accepted" : "changed"}: ${PAGE}`);
  for (const { scene, golden } of changed) console.log(`  ${pathOf(scene)}${golden === undefined ? " (new)" : ""}`);
  for (const path of stray) console.log(`  ${path} ${accepts ? "taken out" : "has no scene"}`);
}
