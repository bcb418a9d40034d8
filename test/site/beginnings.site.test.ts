import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { parse, stringify } from "yaml";
import { makeProject, type Project } from "./project.ts";

const GUIDE = join(import.meta.dirname, "../../content/guide/en");

/** What is neither quick nor ends: installing, and serving. */
const LEFT_OUT = ["npm ci", "npm start"];

const GULL = `<svg xmlns="http://www.w3.org/2000/svg" width="900" height="700" viewBox="0 0 90 70">
<rect width="90" height="70" fill="#dfe6ea"/><path fill="#252a30" d="M8 24Q28 12 43 32Q62 8 84 20Q66 24 55 44Q45 52 37 43Q27 26 8 24Z"/></svg>`;

const DRAWING = `<svg xmlns="http://www.w3.org/2000/svg" xmlns:inkscape="http://www.inkscape.org/namespaces/inkscape" width="120mm" height="100mm" viewBox="0 0 120 100">
<g inkscape:groupmode="layer" inkscape:label="Boat" id="layer1"><path style="fill:#b03030" d="M30 55H90L80 72H42Z"/><path style="fill:#4060a0" d="M58 12V50H34Z"/></g>
<g inkscape:groupmode="layer" inkscape:label="Waves" id="layer2"><path style="fill:#4060a0" d="M5 70Q30 62 60 74T115 70V95H5Z"/></g>
</svg>`;

/** Blocks of code of a page, in order. */
function blocks(page: string, language: string): string[] {
  const text = readFileSync(join(GUIDE, page), "utf8");
  return [...text.matchAll(new RegExp(`^\`\`\`${language}\\n(.*?)^\`\`\``, "gms"))].map((match) => match[1]!.trim());
}

let project: Project;

beforeAll(async () => {
  project = makeProject({ kits: [] });
  project.write("drawing.svg", DRAWING);
  await sharp(Buffer.from(GULL)).jpeg().toFile(join(project.folder, "photo.jpg"));
});

afterAll(() => project?.remove());

/** Runs a command as it is typed in the project's folder. */
function type(command: string): { readonly code: number | null; readonly told: string } {
  const run = spawnSync(command, { cwd: project.folder, shell: true, encoding: "utf8" });
  return { code: run.status, told: `${run.stdout}\n${run.stderr}` };
}

describe.each([
  { page: "a-first-kit.md", kit: "ahoy", levels: undefined },
  { page: "from-a-photograph.md", kit: "gull", levels: undefined },
  { page: "from-a-drawing.md", kit: "evening", levels: ["boat", "water"] },
])("$page, word by word", ({ page, kit, levels }) => {
  const commands = blocks(page, "sh").filter((command) => !LEFT_OUT.includes(command));

  it("makes a kit with page and packet", () => {
    expect(commands.length).toBeGreaterThan(1);
    for (const command of commands) {
      const { code, told } = type(command);
      expect(told, command).not.toMatch(/failed|undefined/i);
      expect(code, `${command}\n${told}`).toBe(0);
    }
    for (const file of ["index.html", "packet-a4.pdf", "pattern.json"])
      expect(existsSync(join(project.folder, "dist/kits", kit, file)), file).toBe(true);
  });

  it.runIf(levels)("takes what it shows to be written under picture", () => {
    const file = `content/kits/${kit}/index.md`;
    const [, matter, body] = project.read(file).split(/^---$/m);
    const { picture } = parse(blocks(page, "yaml")[0]!);
    const ground = { name: "ground", depth: 40, background: true };
    const named = levels!.map((name, i) => ({ name, depth: 10 + 10 * i }));
    const changed = { ...parse(matter!), picture, levels: [...named, ground] };
    project.write(file, `---\n${stringify(changed)}---${body}`);
    expect(type(`npm run check -- ${kit}`)).toMatchObject({ code: 0 });
  });
});
