/** A kit page with 200 leaves and the fields that are typed in. */
export interface Scene {
  readonly name: string;
  readonly address: string;
  readonly fields: readonly string[];
}

const BOOK = "leaves=200&thick=24&last=390";
const FIELDS = ["leafHeight", "leafWidth", "blockThickness", "height", "depth0"] as const;

export const TYPED: readonly Scene[] = [
  {
    name: "harbour-moon, 200 leaves, light and window",
    address: `kits/harbour-moon/index.html?${BOOK}`,
    fields: [...FIELDS, "lightDiameter"],
  },
  { name: "little-gull, 200 leaves", address: `kits/little-gull/index.html?${BOOK}`, fields: FIELDS },
];

/** One page of each kind. */
export const PAGES = [
  "index.html",
  "offline.html",
  "kits/harbour-moon/index.html",
  "kits/harbour-moon/make/index.html",
  "kits/harbour-moon/bench/index.html",
  "kits/harbour-moon/packet/index.html",
  "kits/harbour-moon/packet/large.html",
] as const;

/** Pages that a reader may come to first. */
export const FIRST_PAGES = [
  "index.html",
  "kits/harbour-moon/index.html",
  "kits/harbour-moon/bench/index.html",
  "kits/harbour-moon/packet/index.html",
  "kits/harbour-moon/packet/large.html",
  "kits/little-gull/index.html",
  "guide/index.html",
  "glossary/index.html",
] as const;
