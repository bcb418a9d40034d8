import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";

/** What `npm start` may be told beside which site it serves. */
export interface StartOptions {
  readonly port: number | undefined;
  readonly deskPort: number | undefined;
  /** Whether other machines of the network may see the site; the desk they never see. */
  readonly isOpenToNetwork: boolean;
}

const PORTS = ["--port", "--desk-port"] as const;
const NETWORK = "--network";

/** Reads the words behind `npm start --`. @throws BuildError at one that is not known, or is no port */
export function startOptions(words: readonly string[]): StartOptions {
  const parts = words.flatMap((word) => word.split(/(?<=^--(?:desk-)?port)=/));
  const ports: Partial<Record<(typeof PORTS)[number], number>> = {};
  const isOpenToNetwork = parts.includes(NETWORK);
  const pairs = parts.filter((part) => part !== NETWORK);
  for (let i = 0; i < pairs.length; i += 2) {
    const option = PORTS.find((one) => one === pairs[i]);
    if (option === undefined || ports[option] !== undefined)
      throw new BuildError(say.siteStartOption({ option: pairs[i]! }));
    ports[option] = portOf(pairs[i + 1]);
  }
  return { port: ports["--port"], deskPort: ports["--desk-port"], isOpenToNetwork };
}

function portOf(value: string | undefined): number {
  const port = Number(value);
  if (!Number.isInteger(port) || port < 1 || port > 65_535)
    throw new BuildError(say.siteStartPort({ given: value ?? "" }));
  return port;
}
