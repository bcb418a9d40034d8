import type { IncomingMessage, ServerResponse } from "node:http";
import EleventyDevServer from "@11ty/eleventy-dev-server";
import { UNPRINTED_ADDRESS, UNPRINTED_STYLE } from "./unprinted-page.ts";

/** Where a site is served unless another port is asked for. */
export const SERVED_PORT = 8080;

/** Prints a PDF below the site, where a build would; gives a page that says why that failed. */
export type Print = (path: string) => Promise<string | undefined>;

/** Serves a folder on this machine, has pages that are open load again, and PDFs printed when they are asked for. */
export class ServedSite {
  readonly #server: EleventyDevServer;
  #isOpen = false;
  #origin: string | undefined;

  constructor(folder: string, print: Print) {
    this.#server = new EleventyDevServer("Leaflight", folder, {
      // Scripts fill pages: changes in their markup alone would not show.
      domDiff: false,
      logger: { info: console.log, log: console.log, error: () => undefined },
      middleware: [(request, response, next) => void answer(request, response, next, print)],
    });
  }

  /** Where the site is served; undefined until it is. */
  get origin(): string | undefined {
    return this.#origin;
  }

  /** Opens the site, and says where; later: shows what changed. */
  show(port: number): void {
    if (this.#isOpen) return void this.#server.reload();
    this.#isOpen = true;
    this.#server.serve(port);
    void this.#server.ready().then(() => {
      this.#origin = this.#server.getServerUrl("localhost").replace(/\/$/, "");
    });
  }
}

async function answer(
  request: IncomingMessage,
  response: ServerResponse,
  next: () => void,
  print: Print,
): Promise<void> {
  const path = pathOf(request.url ?? "/");
  if (path === UNPRINTED_ADDRESS) {
    response.setHeader("Content-Type", "text/css; charset=utf-8");
    response.end(UNPRINTED_STYLE);
    return;
  }
  const failure = path?.endsWith(".pdf") ? await print(path.slice(1)) : undefined;
  if (failure === undefined) return next();
  response.statusCode = 500;
  response.setHeader("Content-Type", "text/html; charset=utf-8");
  response.end(failure);
}

/** The path of an address; undefined for one that is none. */
function pathOf(address: string): string | undefined {
  try {
    return decodeURIComponent(new URL(address, "http://localhost").pathname);
  } catch {
    return undefined;
  }
}
