import { BringRoom } from "../../../../src/build/desk/bring-room.ts";
import { openDesk } from "../../../../src/build/desk/desk-server.ts";
import { deskWords } from "../../../../src/build/desk/desk-words.ts";
import { DrawingThread } from "../../../../src/build/desk/drawing-thread.ts";
import { News } from "../../../../src/build/desk/news.ts";
import { PageFiles } from "../../../../src/build/desk/page-files.ts";
import { Texts } from "../../../../src/build/desk/texts.ts";
import type { DeskEntry } from "../../../../src/input/desk/protocol.ts";
import { FIXTURE_KITS } from "../../../input/kit/kit-folders.ts";
import { makeProject, type Project } from "../../../site/project.ts";

/** A desk over a project of fixtures, without the site beside it. */
export interface ClassDesk {
  readonly project: Project;
  /** Where it is, and what a browser opens it by. */
  readonly origin: string;
  readonly address: string;
  /** Tells the desk that files were changed from elsewhere. */
  readonly follow: (paths: readonly string[]) => void;
  readonly close: () => Promise<void>;
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
  classes: Readonly<Record<string, Readonly<Record<string, string>>>> = {},
): Promise<ClassDesk> {
  const project = makeProject({ classes: true });
  for (const [slug, files] of Object.entries(classes))
    for (const [name, text] of Object.entries(files)) project.write(`content/classes/${slug}/${name}`, text);
  const place = { base: project.folder, content: "content" };
  const news = new News();
  const texts = new Texts(project.folder, news);
  const words = deskWords(project.folder);
  const state = {
    site: { title: "Harbour", language: "en" },
    kits: FIXTURE_KITS.map((slug) => entry("kits", slug)),
    classes: ["winter-evenings", ...Object.keys(classes)].map((slug) => entry("classes", slug)),
    ...{ messages: [], shelf: [], fonts: [], isBusy: false },
  };
  const { origin, address, close } = await openDesk(
    {
      base: project.folder,
      output: project.folder,
      news,
      texts,
      bring: new BringRoom(place),
      files: new PageFiles(() => words),
      drawing: new DrawingThread(place),
      state: () => state,
      site: () => undefined,
      print: () => {},
      visit: async () => {},
    },
    FIRST_PORT,
  );
  return {
    project,
    origin,
    address,
    follow: (paths) => texts.follow(paths),
    close: async () => {
      await close();
      project.remove();
    },
  };
}

/** Tests that run side by side take the next one. */
const FIRST_PORT = 9570;
