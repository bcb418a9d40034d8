/** A version of Node as its three numbers. */
type Version = readonly [number, number, number];

/** Whether a version meets a range as package.json writes it: comparisons side by side that all hold, or one of several after `||`. */
export function satisfies(version: string, range: string): boolean {
  return range.split("||").some((side) =>
    side
      .trim()
      .replace(/(>=|<=|[<>^~])\s+/g, "$1")
      .split(/\s+/)
      .every((one) => meets(parts(version), one)),
  );
}

/** The lowest versions of a range, one for each of its sides. */
export function lowest(range: string): string[] {
  return range.split("||").map((side) => parts(side.replace(/[^\d.]/g, "")).join("."));
}

function meets(version: Version, comparison: string): boolean {
  const [, sign = "", bound = ""] = /^(>=|<=|[<>^~]?)v?(.*)$/.exec(comparison)!;
  if (bound === "" || bound === "*") return true;
  const given = bound.split(".").filter((one) => /^\d+$/.test(one)).length;
  const at = compare(version, parts(bound));
  switch (sign) {
    case ">=":
      return at >= 0;
    case ">":
      return at > 0;
    case "<":
      return at < 0;
    case "<=":
      return at <= 0;
    case "^":
      return at >= 0 && version[0] === parts(bound)[0];
    case "~":
      return at >= 0 && version[0] === parts(bound)[0] && version[1] === parts(bound)[1];
    default:
      return parts(bound)
        .slice(0, given)
        .every((one, i) => one === version[i]);
  }
}

function compare(a: Version, b: Version): number {
  return a[0] - b[0] || a[1] - b[1] || a[2] - b[2];
}

function parts(text: string): Version {
  const [major = 0, minor = 0, patch = 0] = text.split(".").map((one) => Number.parseInt(one, 10) || 0);
  return [major, minor, patch];
}
