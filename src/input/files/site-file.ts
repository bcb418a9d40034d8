/** A million bytes, as file managers count. */
export const MB = 1_000_000;

/** What files of `content` are, and how many MB one of them may have. */
export const FILE_LIMITS = {
  /** index.md of a kit or a class, or a page of the guide. */
  page: 1,
  settings: 1,
  cautions: 1,
  words: 1,
  table: 2,
  picture: 16,
  /** A picture that is a photograph or a scan. */
  raster: 64,
  motif: 4,
  photo: 64,
  font: 32,
} as const;

export type FileKind = keyof typeof FILE_LIMITS;

/** A file of the site, or a folder of it. */
export interface SiteFile {
  /** The project's folder. */
  readonly base: string;
  /** Path below the project as the author knows it, with slashes. */
  readonly file: string;
  readonly kind: FileKind;
  /** The folder below the project that no link may lead out of; without it, the project's folder that holds all of them. */
  readonly home?: string | undefined;
}
