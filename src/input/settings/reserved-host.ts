/** Names that nobody's site can have (RFC 2606, sections 2 and 3; RFC 6761, section 6). */
const ENDINGS = ["test", "example", "invalid", "localhost"];
const NAMES = ["example.com", "example.net", "example.org"];

/** The host of an address that stands for no site of anyone's, or undefined where it may be one. */
export function reservedHost(url: string): string | undefined {
  const host = new URL(url).hostname.replace(/\.$/, "");
  const is = (name: string): boolean => host === name || host.endsWith(`.${name}`);
  return [...ENDINGS, ...NAMES].some(is) ? host : undefined;
}
