import { DeskAtWork } from "../../../../src/build/desk/desk-at-work.ts";
import type { DeskEntry } from "../../../../src/input/desk/protocol.ts";
import { FIXTURE_KITS } from "../../../input/kit/kit-folders.ts";
import { makeProject, type Project } from "../../../site/project.ts";

/** A desk over a project of fixtures, without the site beside it. */
export interface ClassDesk {
  readonly project: Project;
  /** What a browser opens it by. */
  readonly address: string;
}

const entry = (kind: "kits" | "classes", slug: string): DeskEntry => ({
  slug,
  title: slug,
  file: `content/${kind}/${slug}/index.md`,
  draft: false,
  state: "fine",
  messages: [],
  warnings: [],
  page: undefined,
  authorPage: undefined,
  cover: undefined,
  papers: [],
});

/** Opens a desk with the fixtures' kits and class, and with more classes: their names with their files' names and texts. */
export async function openClassDesk(
  port: number,
  classes: Readonly<Record<string, Readonly<Record<string, string>>>> = {},
): Promise<ClassDesk> {
  const project = makeProject({ classes: true });
  for (const [slug, files] of Object.entries(classes))
    for (const [name, text] of Object.entries(files)) project.write(`content/classes/${slug}/${name}`, text);
  const desk = new DeskAtWork({ base: project.folder, output: project.folder, site: () => undefined, print: () => {} });
  const address = await desk.open(port);
  desk.show({
    site: { title: "Harbour", language: "en" },
    kits: FIXTURE_KITS.map((slug) => entry("kits", slug)),
    classes: ["winter-evenings", ...Object.keys(classes)].map((slug) => entry("classes", slug)),
    messages: [],
    shelf: [],
    fonts: [],
    isBusy: false,
  });
  return { project, address };
}
