/** Settings of a site, every default filled in. */
export interface SiteSettings {
  readonly title: string;
  readonly summary: string;
  /** Address of the folder where the site stands, with a slash at its end. */
  readonly url?: string | undefined;
  /** The address that the feed's ids are made from; the first `url` where the site has moved. */
  readonly feedId?: string | undefined;
  readonly author?: SiteAuthor | undefined;
  /** Language of the pages (BCP 47). */
  readonly language: string;
  /** For scripts that the program's own fonts have not. */
  readonly fonts: readonly NamedFont[];
}

/** A font file in content/fonts. */
export interface NamedFont {
  readonly file: string;
  /** Files of one name are weights of one font; the font's own name where left out. */
  readonly name?: string | undefined;
  readonly licence?: string | undefined;
}

/** Who makes the kits. */
export interface SiteAuthor {
  readonly name: string;
  readonly kind: "organisation" | "person";
  readonly url?: string | undefined;
}
