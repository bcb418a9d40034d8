import { type ChildProcess, spawn } from "node:child_process";
import { createServer } from "node:net";
import { commandWords } from "../../site/command.ts";
import type { Project } from "../../site/project.ts";

/** `npm start` in a project. */
export interface Serving {
  /** Waits until the terminal says something after what was last waited for, and gives all that it said until then. */
  readonly says: (part: string | RegExp) => Promise<string>;
  /** All that the terminal said so far. */
  readonly told: () => string;
  readonly get: (path: string) => Promise<Response>;
  readonly status: (path: string) => Promise<number>;
  readonly page: (path: string) => Promise<string>;
  readonly stop: () => Promise<void>;
}

/** Starts serving a project on a free port. */
export async function serveProject(project: Project): Promise<Serving> {
  const port = await freePort();
  const args = commandWords("src/build/start.ts", "--port", String(port));
  const child: ChildProcess = spawn(process.execPath, args, { cwd: project.folder });
  let told = "";
  let heard = 0;
  for (const stream of [child.stdout!, child.stderr!]) stream.on("data", (text: Buffer) => (told += text.toString()));
  const get = (path: string): Promise<Response> => fetch(`http://localhost:${port}${path}`);
  return {
    says: async (part) => {
      for (let i = 0; i < 600; i += 1) {
        const fresh = told.slice(heard);
        const at = typeof part === "string" ? fresh.indexOf(part) : fresh.search(part);
        if (at >= 0) {
          heard = told.length;
          return fresh;
        }
        await new Promise((resolve) => setTimeout(resolve, 100));
      }
      throw new Error(`waited for ${part}; the terminal says:\n${told}`);
    },
    told: () => told,
    get,
    status: async (path) => (await get(path)).status,
    page: async (path) => (await get(path)).text(),
    stop: async () => {
      const ended = new Promise((resolve) => child.once("exit", resolve));
      child.kill();
      await ended;
    },
  };
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once("error", reject);
    server.listen(0, () => {
      const address = server.address();
      server.close(() => resolve(typeof address === "object" ? address!.port : 0));
    });
  });
}
