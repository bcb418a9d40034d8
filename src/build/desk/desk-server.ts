import { once } from "node:events";
import { createServer, type Server } from "node:http";
import { getRequestListener } from "@hono/node-server";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";
import type { Desk } from "./desk.ts";
import { deskApp } from "./desk-app.ts";
import { OPEN } from "./gate.ts";
import { newKeys } from "./keys.ts";
import { LOOPBACK } from "./loopback.ts";

/** So many ports are tried, one after the other. */
const TRIED = 20;

/** A desk that is open, and how it is closed. */
export interface OpenDesk {
  /** Where it is; leads nowhere without its key. */
  readonly origin: string;
  /** What a person opens it by. */
  readonly address: string;
  readonly close: () => Promise<void>;
}

/** Serves the desk to this machine alone, at the first free port from `port` on. @throws BuildError where none is free */
export async function openDesk(desk: Desk, port: number, tried = TRIED): Promise<OpenDesk> {
  const keys = newKeys();
  let taken = port;
  const app = deskApp(desk, () => ({ keys, port: taken }));
  const server = createServer(getRequestListener(app.fetch, { hostname: LOOPBACK }));
  for (taken = port; !(await listens(server, taken)); taken += 1)
    if (taken + 1 >= port + tried || taken >= 65_535)
      throw new BuildError(say.deskNoPort({ first: port, last: taken }));
  const origin = `http://${LOOPBACK}:${taken}`;
  return {
    origin,
    address: `${origin}${OPEN}?key=${keys.cookie}`,
    close: async () => {
      server.close();
      server.closeAllConnections();
      await once(server, "close");
    },
  };
}

/** Whether a port was free. */
async function listens(server: Server, port: number): Promise<boolean> {
  server.listen(port, LOOPBACK);
  try {
    await once(server, "listening");
    return true;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === "EADDRINUSE" || code === "EACCES") return false;
    throw error;
  }
}
