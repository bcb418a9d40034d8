/** The guide's contents page, below the site. */
export const GUIDE = "/guide/";

/** The address of a page of the guide, below the site. */
export function guideAddress(name: string): string {
  return `${GUIDE}${name}/`;
}
