import { join } from "node:path";
import { inject } from "vitest";
import { ADDRESS } from "./address.ts";
import { makeProject, PACKETS, type ProjectOptions } from "./project.ts";
import { type OpenedSite, openSite } from "./shared-site.ts";

/** A site that a suite may change. */
export interface OwnSite extends OpenedSite {
  /** Replaces text in a file of the project. @throws Error where it is not there */
  readonly change: (path: string, from: string, to: string) => void;
  /** Builds it again. @throws Error with what the build told where it fails */
  readonly rebuild: () => Promise<void>;
}

/** Builds a project of its own, with the packets that the shared one printed, and opens it. */
export async function openOwnSite(options: ProjectOptions): Promise<OwnSite> {
  const project = makeProject({ packets: join(inject("site").folder, PACKETS), ...options });
  const rebuild = async (): Promise<void> => {
    const { code, stderr } = await project.buildAside({ LEAFLIGHT_SITE_URL: ADDRESS });
    if (code !== 0) throw new Error(stderr);
  };
  await rebuild();
  const site = await openSite(project.folder);
  return {
    ...site,
    rebuild,
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
