import { isIP } from "node:net";
import { hostname } from "node:os";

/** Names that a home network gives a machine beside the one that it has itself (RFC 6762, multicast DNS). */
const LOCAL = ".local";

/**
 * Whether a request's Host header names this machine as others of its network do: by an address, or by the machine's own name,
 * with the port that it came in at. Somebody may have made a name of theirs lead here, but never an address.
 */
export function isNetworkHost(host: string | undefined, port: number, machine = hostname()): boolean {
  const [, name, at] = /^(\[[^\]]+\]|[^:]+)(?::(\d+))?$/.exec(host ?? "") ?? [];
  if (name === undefined || Number(at ?? 80) !== port) return false;
  const own = machine.toLowerCase();
  const asked = name.toLowerCase();
  return isIP(name.replace(/^\[(.+)\]$/, "$1")) !== 0 || [own, `${own.split(".")[0]}${LOCAL}`].includes(asked);
}
