/**
 * How long texts of front matters and settings may be, in characters: long enough for any good use, and so that each is
 * printed whole, of wide letters and without a space, too.
 */
export const TEXT = {
  title: 120,
  summary: 500,
  /** A level, a sheet, a session, a licence: what stands beside a figure or over a column. */
  name: 60,
  /** A line of a list: a supply, what to bring, a place, a link. */
  line: 120,
  /** A note on a version, what a photo shows, where a picture is from. */
  note: 300,
  passage: 1000,
  unit: 30,
  currency: 12,
  version: 20,
  /** A path inside a folder, as long as disks allow a name, or a list of ids that is typed in a cell. */
  path: 255,
  address: 500,
  /** The address of the site, which stands on cards with what lies below it. */
  site: 160,
} as const;
