import EleventyDevServer from "@11ty/eleventy-dev-server";

/** Where a site is served unless another port is asked for. */
const PORT = 8080;

/** Serves a folder on this machine, and has pages that are open load again. */
export class ServedSite {
  readonly #server: EleventyDevServer;
  #isOpen = false;

  constructor(folder: string) {
    this.#server = new EleventyDevServer("Leaflight", folder, {
      // Scripts fill pages: changes in their markup alone would not show.
      domDiff: false,
      logger: { info: console.log, log: console.log, error: () => undefined },
    });
  }

  /** Opens the site, and says where; later: shows what changed. */
  show(port = PORT): void {
    if (this.#isOpen) this.#server.reload();
    else this.#server.serve(port);
    this.#isOpen = true;
  }
}
