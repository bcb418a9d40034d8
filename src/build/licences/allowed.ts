/** Licences (SPDX identifiers) under which what reaches a site, or helps to make it, may be used: each may be passed on with its text. */
export const ALLOWED_LICENCES: readonly string[] = [
  "0BSD",
  "Apache-2.0",
  "BlueOak-1.0.0",
  "BSD-2-Clause",
  "BSD-3-Clause",
  "BSL-1.0",
  "CC0-1.0",
  "ISC",
  "MIT",
  "OFL-1.1",
  "Python-2.0",
  "Unlicense",
];

/** Whether an SPDX expression is allowed: of an `OR` one side, of an `AND` each. Brackets inside brackets are not read. */
export function isAllowed(expression: string): boolean {
  return expression.split(" OR ").some((side) =>
    side
      .split(" AND ")
      .map((one) => one.replaceAll(/[()]/g, "").trim())
      .every((one) => ALLOWED_LICENCES.includes(one)),
  );
}
