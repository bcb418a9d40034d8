/** Everything but the characters that XML 1.0 allows (production 2, Char). */
const NOT_XML = /[^\t\n\r -\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu;

const SIGNS: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

/** What most attributes are: letters of ASCII without signs. */
const PLAIN = /^[ !#-%'-;=?-~]*$/;

/** Text for an XML document, or an attribute in quotes: markup escaped, and without characters that XML does not allow. */
export function escapeXml(text: string): string {
  return PLAIN.test(text) ? text : text.replace(NOT_XML, "").replace(/[&<>"]/g, (sign) => SIGNS[sign]!);
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
