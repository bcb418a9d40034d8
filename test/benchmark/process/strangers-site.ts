import { join } from "node:path";
import { commandWords } from "../../site/command.ts";
import { makeProject, type Project } from "../../site/project.ts";
import { type Stranger, writeStrangers } from "../../site/strangers.ts";
import { measure, type Used } from "./measured.ts";

/** A project of many kits, as they come from strangers. */
export interface StrangersSite extends Omit<Project, "build"> {
  readonly dist: string;
  readonly strangers: readonly Stranger[];
  /** Builds it without packets, as a process of its own. */
  readonly build: () => Promise<Used>;
  /** Changes one kit, another one each time: a sentence, and its book, so that all of it is computed anew. Gives its page, and what now stands in it. */
  readonly changeOne: () => { readonly page: string; readonly text: string };
}

export function strangersSite(count: number): StrangersSite {
  const project = makeProject({ kits: [] });
  const strangers = writeStrangers(join(project.folder, "content"), count);
  let changes = 0;
  return {
    ...project,
    dist: join(project.folder, "dist"),
    strangers,
    build: () => measure(project.folder, commandWords("src/build/build.ts", "--no-packets")),
    changeOne: () => {
      const { slug, text: own } = strangers[changes % count]!;
      changes += 1;
      const text = `Change number ${changes} of the benchmark.`;
      const higher = own.replace(
        /^( +leafHeight: )(.*) mm$/m,
        (_, key, height) => `${key}${Number(height) + changes} mm`,
      );
      project.write(`content/kits/${slug}/index.md`, `${higher}\n${text}\n`);
      return { page: `kits/${slug}/index.html`, text };
    },
  };
}
