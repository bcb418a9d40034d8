/** Nobody but this machine reaches this address. */
export const LOOPBACK = "127.0.0.1";

/** This machine's names for itself. */
const NAMES = [LOOPBACK, "localhost", "[::1]"] as const;

/** The port that an address of the web has without saying so. */
const UNSAID = 80;

/**
 * Whether a request's Host header is a name of this machine for itself, with the port that it came in at. Any other name is one
 * that somebody made lead here, so that a page of theirs may pass as one of this server's.
 */
export function isLoopbackHost(host: string | undefined, port: number): boolean {
  return NAMES.some((name) => host === `${name}:${port}` || (port === UNSAID && host === name));
}
