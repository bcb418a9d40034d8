import EleventyDevServer from "@11ty/eleventy-dev-server";

/** Nobody but this machine reaches this address. */
const LOOPBACK = "127.0.0.1";

type Options = ConstructorParameters<typeof EleventyDevServer>[2];

/** Eleventy's server of a folder: it listens to this machine alone, unless it is open to the network. */
export class PageServer extends EleventyDevServer {
  readonly #host: string | undefined;

  constructor(folder: string, isOpenToNetwork: boolean, options: Options) {
    super("Leaflight", folder, { ...options, showAllHosts: isOpenToNetwork });
    this.#host = isOpenToNetwork ? undefined : LOOPBACK;
  }

  /** What the server begins to listen by, at each port that it tries; by itself it listens to every machine. */
  override _serverListen(port: number): void {
    this.server.listen({ port, host: this.#host });
  }
}
