import { ADDRESS } from "./address.ts";
import { type Built, makeProject, type ProjectOptions } from "./project.ts";
import { keptByAll, type OpenedSite, openSite } from "./shared-site.ts";

/** A site that a suite may change. */
export interface OwnSite extends OpenedSite {
  /** Replaces text in a file of the project. @throws Error where it is not there */
  readonly change: (path: string, from: string, to: string) => void;
  /** Writes a file of the project. */
  readonly write: (path: string, text: string) => void;
  /** Builds it again. @throws Error with what the build told where it fails */
  readonly rebuild: () => Promise<Built>;
}

/** What a site of a suite's own is made of. */
export interface OwnOptions extends ProjectOptions {
  /** Files that stand beside the fixtures from the first build on, by their paths, with their texts. */
  readonly files?: Readonly<Record<string, string>>;
  /** Options of each build. */
  readonly options?: readonly string[];
}

/** Builds a project of its own, with what was made and printed for the shared one, and opens it. */
export async function openOwnSite({ files = {}, options = [], ...given }: OwnOptions): Promise<OwnSite> {
  const project = makeProject({ kept: keptByAll(), ...given });
  for (const [path, text] of Object.entries(files)) project.write(path, text);
  const rebuild = async (): Promise<Built> => {
    const built = await project.buildAside({ LEAFLIGHT_SITE_URL: ADDRESS }, options);
    if (built.code !== 0) throw new Error(built.stderr);
    return built;
  };
  await rebuild();
  const site = await openSite(project.folder);
  return {
    ...site,
    rebuild,
    write: project.write,
    change: (path, from, to) => {
      const text = project.read(path);
      if (!text.includes(from)) throw new Error(`${path} has no "${from}"`);
      project.write(path, text.replace(from, to));
    },
    close: async () => {
      await site.close();
      project.remove();
    },
  };
}
