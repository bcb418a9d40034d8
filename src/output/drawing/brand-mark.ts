/** The site's own mark: a lamp low in a dark round. */
const DEEP = "#1d4b53";
const LAMP = "#e5a84f";
const LIGHT = "#ffe6a8";

/**
 * The brand mark as SVG, 100 units wide. `round` stands on nothing; `full` fills its square and keeps the lamp inside the
 * middle circle of 40 % radius, which every mask leaves (W3C Web App Manifest, "Icon masks and safe zone").
 */
export function brandMark(shape: "round" | "full"): string {
  const scale = shape === "round" ? 1 : 0.72;
  const lamp = (radius: number, fill: string): string =>
    `<circle cx="50" cy="${50 + 12 * scale}" r="${radius * scale}" fill="${fill}"/>`;
  const ground =
    shape === "round"
      ? `<circle cx="50" cy="50" r="50" fill="${DEEP}"/>`
      : `<rect width="100" height="100" fill="${DEEP}"/>`;
  return `<svg xmlns="http://www.w3.org/2000/svg" width="100" height="100" viewBox="0 0 100 100">${ground}${lamp(32, LAMP)}${lamp(18, LIGHT)}</svg>\n`;
}
