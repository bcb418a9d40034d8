/** What addresses may hold that a page must take for what it is: something that somebody wrote. */

/** Harbour Moon states its height, has three levels and a light: of the figures in an address it has no field for the opening alone. */
export const OF_KIT = [
  ...[
    "height",
    "width",
    "thick",
    "leaves",
    "page-one",
    "last",
    "plates",
    "read",
    "border",
    "head",
    "picture",
    "depths",
  ],
  ...["units", "step", "folds", "light-wide", "light-high", "bulk", "lost"],
];
/** What the catalogue reads. */
export const OF_FINDER = [...OF_KIT.slice(0, 8), "hours", "levels", "light", "fit", "sort"];

/** What stands as the value of every name, and which names may have it all the same; told by hand. */
export const VALUES = [
  { value: "99999", sensible: [] },
  { value: "0", sensible: ["head", "bulk"] },
  { value: "-1", sensible: [] },
  { value: "1e308", sensible: [] },
  { value: "0x10", sensible: [] },
  { value: "0.0000001", sensible: ["head", "bulk"] },
  { value: "", sensible: ["plates", "lost"] },
  { value: "NaN", sensible: [] },
  // Hosts take some 16,000 characters of an address.
  { value: "9".repeat(700), sensible: [] },
  { value: "٣", sensible: [] },
  { value: "%zz%", sensible: [] },
  { value: "<img src=x onerror=window.broken=1>", sensible: [] },
  { value: "%3Csvg%20onload=window.broken=1%3E", sensible: [] },
  { value: "%00%E2%80%AEabc%0A", sensible: [] },
  { value: "12&__proto__=1&constructor=2&utm_source=3", sensible: ["head", "bulk", "lost", "hours"] },
];
