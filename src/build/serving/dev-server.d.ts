declare module "@11ty/eleventy-dev-server" {
  import type { IncomingMessage, Server, ServerResponse } from "node:http";

  export default class EleventyDevServer {
    constructor(
      name: string,
      folder: string,
      options: {
        readonly domDiff?: boolean;
        /** Whether it tells addresses of this machine in its networks, too. */
        readonly showAllHosts?: boolean;
        readonly portReassignmentRetryCount?: number;
        readonly middleware?: readonly ((
          request: IncomingMessage,
          response: ServerResponse,
          next: () => void,
        ) => void)[];
        readonly logger?: Readonly<Record<"info" | "log" | "error", (line: string) => void>>;
      },
    );
    serve(port: number): void;
    readonly server: Server;
    _serverListen(port: number): void;
    onRequestHandler(request: IncomingMessage, response: ServerResponse): Promise<void>;
    /** Opens `updateServer`, once the server listens. */
    setupReloadNotifier(): void;
    /** A `WebSocketServer` of ws. */
    readonly updateServer: {
      readonly options: { verifyClient?: (asked: { readonly req: IncomingMessage }) => boolean };
    };
    ready(): Promise<void>;
    getServerUrl(host: string): string;
    reload(): void;
    close(): Promise<void>;
  }
}
