/** A kit's front as the catalogue and the desk show it, in the kit's folder. */
export const COVER = "small.webp";

/** Where a kit's cover stands below the site. */
export function coverPath(slug: string): string {
  return `kits/${slug}/${COVER}`;
}
