/** A document as JSON with a line for each key, each item of its lists and each of the window's parts, so that a diff reads. */
export function jsonLines(document: Readonly<Record<string, unknown>>): string {
  const fields = Object.entries(document).map(([key, value]) => `  ${JSON.stringify(key)}: ${writeValue(value)}`);
  return `{\n${fields.join(",\n")}\n}\n`;
}

function writeValue(value: unknown): string {
  if (hasParts(value)) {
    const { parts, ...rest } = value;
    return `${JSON.stringify(rest).slice(0, -1)}, "parts": ${writeList(parts)}}`;
  }
  return Array.isArray(value) && value.length > 0 ? writeList(value) : JSON.stringify(value);
}

function writeList(list: readonly unknown[]): string {
  return `[\n${list.map((item) => `    ${JSON.stringify(item)}`).join(",\n")}\n  ]`;
}

/** The window's parts are long: a line each. */
function hasParts(value: unknown): value is { readonly parts: readonly unknown[] } {
  return typeof value === "object" && value !== null && "parts" in value && Array.isArray(value.parts);
}
