/** How often each device changed something, by the device's name. Two copies tell from it which of them knows the other. */
export type Versions = Readonly<Record<string, number>>;

/** How a copy stands to another one: `ahead` knows all of the other and more, `apart` each was changed without the other. */
export type Standing = "same" | "ahead" | "behind" | "apart";

/** The same copy after one more change on a device. */
export function countChange(versions: Versions, device: string): Versions {
  return { ...versions, [device]: (versions[device] ?? 0) + 1 };
}

export function standingOf(one: Versions, other: Versions): Standing {
  const devices = [...new Set([...Object.keys(one), ...Object.keys(other)])];
  const more = devices.some((device) => (one[device] ?? 0) > (other[device] ?? 0));
  const less = devices.some((device) => (one[device] ?? 0) < (other[device] ?? 0));
  if (more && less) return "apart";
  return more ? "ahead" : less ? "behind" : "same";
}

/** What knows both copies. */
export function mergedVersions(one: Versions, other: Versions): Versions {
  const merged = { ...one };
  for (const [device, count] of Object.entries(other)) merged[device] = Math.max(count, merged[device] ?? 0);
  return merged;
}
