import type { Element } from "@xmldom/xmldom";
import { type CssNode, ident } from "css-tree/dist/csstree.esm";

/** An attribute that must be there, or be of a value. */
export interface AttributeTest {
  readonly name: string;
  /** Undefined where any value does. */
  readonly matcher: string | undefined;
  readonly value: string;
}

const MATCHERS: Readonly<Record<string, (found: string, value: string) => boolean>> = {
  "=": (found, value) => found === value,
  "~=": (found, value) => found.split(/\s+/).includes(value),
  "|=": (found, value) => found === value || found.startsWith(`${value}-`),
  "^=": (found, value) => value !== "" && found.startsWith(value),
  "$=": (found, value) => value !== "" && found.endsWith(value),
  "*=": (found, value) => value !== "" && found.includes(value),
};

/** The test of a css-tree `AttributeSelector` node; undefined for namespaces and flags. */
export function readAttributeTest(node: CssNode): AttributeTest | undefined {
  const { matcher, value, flags } = node;
  // An attribute's name is a node of its own, unlike every other name.
  const attribute = (node.name as CssNode | undefined)?.name;
  const known = matcher === undefined || matcher === null || Object.hasOwn(MATCHERS, matcher);
  if (typeof attribute !== "string" || attribute.includes("|") || flags || !known) return undefined;
  return { name: ident.decode(attribute), matcher: matcher ?? undefined, value: wantedValue(value) };
}

/** Whether an element passes the test. Source: Selectors 4, "Attribute selectors". */
export function attributeHolds({ name, matcher, value }: AttributeTest, element: Element): boolean {
  const found = element.getAttributeNode(name)?.value;
  if (found === undefined) return false;
  return matcher === undefined || MATCHERS[matcher]!(found, value);
}

/** What stands behind the sign: a text in quotes, which css-tree has already read, or a name. */
function wantedValue(value: CssNode["value"] | null): string {
  if (value === undefined || value === null) return "";
  if (typeof value === "string") return value;
  return value.type === "String" && typeof value.value === "string" ? value.value : ident.decode(value.name ?? "");
}
