import { join } from "node:path";
import { inject } from "vitest";
import { ADDRESS } from "./address.ts";
import { type Built, makeProject, PACKETS, type ProjectOptions } from "./project.ts";
import { type OpenedSite, openSite } from "./shared-site.ts";

/** A site that a suite may change. */
export interface OwnSite extends OpenedSite {
  /** Replaces text in a file of the project. @throws Error where it is not there */
  readonly change: (path: string, from: string, to: string) => void;
  /** Writes a file of the project. */
  readonly write: (path: string, text: string) => void;
  /** Builds it again. @throws Error with what the build told where it fails */
  readonly rebuild: () => Promise<Built>;
}

/** Builds a project of its own, with the packets that the shared one printed, and opens it. */
export async function openOwnSite(options: ProjectOptions): Promise<OwnSite> {
  const project = makeProject({ packets: join(inject("site").folder, PACKETS), ...options });
  const rebuild = async (): Promise<Built> => {
    const built = await project.buildAside({ LEAFLIGHT_SITE_URL: ADDRESS });
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
