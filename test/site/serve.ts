import { existsSync, readFileSync, statSync } from "node:fs";
import { createServer, type Server } from "node:http";
import { extname, join } from "node:path";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css",
  ".js": "text/javascript",
  ".json": "application/json",
  ".csv": "text/csv",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".woff2": "font/woff2",
  ".pdf": "application/pdf",
  ".webmanifest": "application/manifest+json",
};

/** A site on a web host, under a folder of it, as simple hosts do it: no headers beside the type, and 404.html for what is missing. */
export interface Host {
  readonly site: string;
  /** Paths below the folder that were asked for, in order. */
  readonly asked: string[];
  /** Takes the host off the network, open connections included. */
  readonly stop: () => Promise<void>;
  /** Brings it back at the same address. */
  readonly start: () => Promise<void>;
  /** Answers a path in the files' place, where it gives something; undefined lets the files answer. */
  instead: ((path: string) => Answer | undefined) | undefined;
}

/** What a host says of a path: `cut` closes the connection after the body, before all that was promised is sent. */
export interface Answer {
  readonly status: number;
  readonly type: string;
  readonly body: string | Buffer;
  readonly cut?: boolean;
}

export async function serve(folder: () => string, under: string): Promise<Host> {
  const asked: string[] = [];
  const base = `/${under}/`;
  let server: Server | undefined;
  let port = 0;
  const start = async (): Promise<void> => {
    server = createServer((request, response) => {
      const { pathname } = new URL(request.url!, "http://host");
      const path = decodeURIComponent(pathname.startsWith(base) ? pathname.slice(base.length) : `../${pathname}`);
      asked.push(path);
      const other = host.instead?.(path);
      if (other) {
        const length = Buffer.byteLength(other.body) + (other.cut ? 1000 : 0);
        response.writeHead(other.status, { "content-type": other.type, "content-length": length });
        response.write(other.body, () => (other.cut ? response.destroy() : response.end()));
        return;
      }
      const file = join(folder(), path.endsWith("/") || path === "" ? `${path}index.html` : path);
      if (path.startsWith("..") || !existsSync(file) || !statSync(file).isFile()) {
        const missing = join(folder(), "404.html");
        const page = !path.startsWith("..") && existsSync(missing) ? readFileSync(missing) : "not here";
        response.writeHead(404, { "content-type": TYPES[".html"] }).end(page);
        return;
      }
      response.writeHead(200, { "content-type": TYPES[extname(file)] ?? "application/octet-stream" });
      response.end(readFileSync(file));
    });
    await new Promise<void>((resolve) => server!.listen(port, "127.0.0.1", resolve));
    port = (server.address() as { port: number }).port;
  };
  const host: Host = {
    get site() {
      return `http://127.0.0.1:${port}${base}`;
    },
    instead: undefined,
    asked,
    start,
    stop: () =>
      new Promise((resolve) => {
        server!.close(() => resolve());
        server!.closeAllConnections();
      }),
  };
  await start();
  return host;
}
