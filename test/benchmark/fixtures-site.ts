import { join } from "node:path";
import { FIXTURE_KITS } from "../input/kit/kit-folders.ts";
import { commandWords } from "../site/command.ts";
import { makeProject } from "../site/project.ts";
import { measure } from "./process/measured.ts";

/** The fixtures' site, built without packets once for all parts that look at it. */
export class FixturesSite {
  readonly #project = makeProject({ kits: FIXTURE_KITS });
  #built: Promise<unknown> | undefined;

  /** Its built folder. */
  async dist(): Promise<string> {
    this.#built ??= measure(this.#project.folder, commandWords("src/build/build.ts", "--no-packets"));
    await this.#built;
    return join(this.#project.folder, "dist");
  }

  remove(): void {
    this.#project.remove();
  }
}
