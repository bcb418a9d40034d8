/**
 * Whether a media query list means the picture as it is taken: on a light screen, at rest.
 * Source: Media Queries 4; of conditions only those of colour and motion are known, and an unknown one does not hold.
 */
export function mediaApplies(list: string): boolean {
  if (list.trim() === "") return true;
  return list
    .toLowerCase()
    .split(",")
    .some((query) =>
      query
        .trim()
        .split(/\s+and\s+/)
        .every((part) => KNOWN.test(part.trim())),
    );
}

const KNOWN =
  /^(?:(?:only\s+)?(?:all|screen)|\(\s*prefers-color-scheme\s*:\s*(?:light|no-preference)\s*\)|\(\s*prefers-reduced-motion(?:\s*:\s*reduce)?\s*\))$/;
