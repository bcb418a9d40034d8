declare module "@11ty/eleventy-dev-server" {
  import type { IncomingMessage, ServerResponse } from "node:http";

  export default class EleventyDevServer {
    constructor(
      name: string,
      folder: string,
      options: {
        readonly domDiff?: boolean;
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
    ready(): Promise<void>;
    getServerUrl(host: string): string;
    reload(): void;
    close(): Promise<void>;
  }
}
