import { z } from "zod";

/** A part's manifest, at the part's top. */
export const PART_FILE = "part.json";

/** The manifest's name in itself; its number grows when older parts can no longer be joined. */
export const PART_SCHEMA = "leaflight/part/1";

/** What a part holds of the site, below its top, and what the rest of the site has to know of its kits. */
export const PART_SITE = "site";
export const PART_KNOWN = "known";

/** More parts than anybody has machines. */
export const MOST_PARTS = 999;

const OF_A_KIT = new RegExp(`^(?:${PART_KNOWN}|${PART_SITE}/kits)/([^/]+)`);

const hash = z.string().regex(/^[0-9a-f]{64}$/);
const key = z.string().regex(/^[0-9a-f]{1,64}$/);
const slug = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/);

/** A path below the part, with slashes, that leads nowhere else. */
const path = z
  .string()
  .max(1000)
  .regex(/^[^\\/\0]+(\/[^\\/\0]+)*$/)
  .refine((text) => text.split("/").every((name) => name !== "." && name !== ".."));

const file = z.strictObject({ path, size: z.int().min(0), sha256: hash });

const kit = z
  .strictObject({ slug, key, files: z.array(file) })
  .refine(({ slug: of, files }) => files.every((one) => kitOf(one.path) === of));

const shard = z
  .strictObject({ number: z.int().min(1), of: z.int().min(1).max(MOST_PARTS) })
  .refine(({ number, of }) => number <= of);

export const partManifest = z.strictObject({
  schema: z.literal(PART_SCHEMA),
  /** Which of several equal parts it is; none where its kits were picked by hand. */
  shard: shard.optional(),
  /** What all parts of a site are made from. */
  inputs: z.strictObject({
    content: key,
    program: key,
    address: z.string().max(2000),
    browser: z.string().max(500),
    kits: key,
  }),
  kits: z.array(kit),
  /** Files that are of no kit alone: style sheets that pages share. */
  shared: z.array(file.refine((one) => one.path.startsWith(`${PART_SITE}/`) && kitOf(one.path) === undefined)),
});

export type PartManifest = z.infer<typeof partManifest>;
export type PartFile = PartManifest["shared"][number];
export type PartInputs = PartManifest["inputs"];

/** Where a part keeps what the rest of the site has to know of a kit. */
export function knownPath(of: string): string {
  return `${PART_KNOWN}/${of}`;
}

/** The kit that a file of a part belongs to; none where several share it. */
export function kitOf(at: string): string | undefined {
  return OF_A_KIT.exec(at)?.[1];
}
