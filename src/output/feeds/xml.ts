/** Text for an XML document: markup escaped, and without characters that XML 1.0 does not allow (production 2, Char). */
export function escapeXml(text: string): string {
  return [...text]
    .filter(isXmlChar)
    .join("")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}

/** `<name a="b">text</name>`; without text `<name a="b"/>`. Attributes that are undefined are left out. */
export function element(
  name: string,
  text = "",
  attributes: Readonly<Record<string, string | undefined>> = {},
): string {
  const stated = Object.entries(attributes).filter((pair): pair is [string, string] => pair[1] !== undefined);
  const tag = [name, ...stated.map(([key, value]) => `${key}="${escapeXml(value)}"`)].join(" ");
  return text === "" ? `<${tag}/>` : `<${tag}>${escapeXml(text)}</${name}>`;
}

function isXmlChar(letter: string): boolean {
  const code = letter.codePointAt(0)!;
  const isControl = code < 0x20 && code !== 0x9 && code !== 0xa && code !== 0xd;
  return !isControl && !(code >= 0xd800 && code <= 0xdfff) && code !== 0xfffe && code !== 0xffff;
}
