import type { IncomingMessage, ServerResponse } from "node:http";
import EleventyDevServer from "@11ty/eleventy-dev-server";
import * as say from "../../words/messages.ts";
import { isLoopbackHost, LOOPBACK } from "../desk/loopback.ts";
import { isNetworkHost } from "./network-host.ts";

type Options = ConstructorParameters<typeof EleventyDevServer>[2];

/**
 * Eleventy's server of a folder: it listens and answers to this machine alone, unless it is open to the network. Pages of other
 * origins can read nothing of it, neither as scripts nor by a name that they made lead here, nor listen to its news.
 */
export class PageServer extends EleventyDevServer {
  readonly #isOpenToNetwork: boolean;

  constructor(folder: string, isOpenToNetwork: boolean, options: Options) {
    super("Leaflight", folder, { ...options, showAllHosts: isOpenToNetwork });
    this.#isOpenToNetwork = isOpenToNetwork;
  }

  /** What the server begins to listen by, at each port that it tries; by itself it listens to every machine. */
  override _serverListen(port: number): void {
    this.server.listen({ port, host: this.#isOpenToNetwork ? undefined : LOOPBACK });
  }

  /** What every request comes to first. */
  override async onRequestHandler(request: IncomingMessage, response: ServerResponse): Promise<void> {
    response.setHeader("Cross-Origin-Resource-Policy", "same-origin");
    if (this.#isAddressed(request)) return super.onRequestHandler(request, response);
    response.writeHead(403, { "Content-Type": "text/plain; charset=utf-8" });
    response.end(`${this.#isOpenToNetwork ? say.servedOtherName() : say.servedOtherHost()}\n`);
  }

  /** What is opened to tell pages that they changed: a page of any origin may ask for it. */
  override setupReloadNotifier(): void {
    super.setupReloadNotifier();
    this.updateServer.options.verifyClient = ({ req }) =>
      this.#isAddressed(req) && req.headers.origin === `http://${req.headers.host}`;
  }

  #isAddressed({ headers, socket }: IncomingMessage): boolean {
    const asked = [headers.host, socket.localPort ?? 0] as const;
    return isLoopbackHost(...asked) || (this.#isOpenToNetwork && isNetworkHost(...asked));
  }
}
