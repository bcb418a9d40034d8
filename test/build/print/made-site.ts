import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { createServer, type Server } from "node:net";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import type { PrintJob } from "../../../src/build/print/print-job.ts";
import { PAPERS } from "../../../src/output/views/paper.ts";

/** A built site of a few pages by hand, with a secret beside it. */
export interface MadeSite {
  readonly output: string;
  /** A file outside the site. */
  readonly secret: string;
  readonly write: (path: string, text: string) => void;
  readonly read: (path: string) => string;
  /** A job for a page of the site. */
  readonly job: (path: string) => PrintJob;
  readonly remove: () => void;
}

export const SECRET = "the-secret-outside";

export function madeSite(): MadeSite {
  const folder = mkdtempSync(join(tmpdir(), "leaflight-made-"));
  const output = join(folder, "site");
  const secret = join(folder, "secret.svg");
  const write = (path: string, text: string): void => {
    mkdirSync(dirname(join(output, path)), { recursive: true });
    writeFileSync(join(output, path), text);
  };
  write("own.svg", '<svg xmlns="http://www.w3.org/2000/svg" width="40" height="30"><path d="M0 0h40v30z"/></svg>');
  writeFileSync(secret, `<svg xmlns="http://www.w3.org/2000/svg" width="7" height="7"><text>${SECRET}</text></svg>`);
  symlinkSync(secret, join(output, "leads-out.svg"));
  return {
    output,
    secret,
    write,
    read: (path) => readFileSync(join(output, path), "utf8"),
    job: (path) => ({
      page: join(output, path),
      of: { kind: "kit", slug: "made", name: path },
      pictures: [],
      paper: PAPERS[0]!,
      target: join(folder, "out.pdf"),
      title: path,
      footer: "foot",
    }),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

/** A host that counts who comes, at a port of this machine. */
export interface Canary {
  readonly address: string;
  readonly visits: () => number;
  readonly stop: () => Promise<void>;
}

export function openCanary(): Promise<Canary> {
  let visits = 0;
  const server: Server = createServer((socket) => {
    visits += 1;
    socket.destroy();
  });
  return new Promise((resolve) => {
    server.listen(0, "127.0.0.1", () => {
      const at = server.address();
      const port = typeof at === "object" && at !== null ? at.port : 0;
      const stop = (): Promise<void> => new Promise((done) => server.close(() => done()));
      resolve({ address: `127.0.0.1:${port}`, visits: () => visits, stop });
    });
  });
}
