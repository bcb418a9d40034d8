/** The folder of a built site for those who hold its classes: it is made with the site, and not published with it. */
export const PRIVATE = "private";

/** Where a class's own papers stand, below the site: `private/classes/winter-evenings`. */
export function privateFolder(slug: string): string {
  return `${PRIVATE}/classes/${slug}`;
}
