import { CssVariables } from "./css-variables.ts";

/** What the reader knows of a property of CSS or presentation attribute. */
interface PropertyRule {
  readonly inherited: boolean;
  readonly initial: string;
  /** The only values allowed; undefined for any. */
  readonly values?: readonly string[];
}

const NONE_UNLESS_SET = { inherited: false, initial: "none" } as const;

/**
 * The properties that decide which areas are filled. Source: SVG 2 property index, CSS Masking 1, Filter Effects 1.
 * `overflow` starts as `hidden` because only `symbol` and inner `svg` ask for it, which the user agent style sheet hides.
 */
export const STYLE_PROPERTIES = {
  color: { inherited: true, initial: "black" },
  fill: { inherited: true, initial: "black" },
  "fill-opacity": { inherited: true, initial: "1" },
  "fill-rule": { inherited: true, initial: "nonzero", values: ["nonzero", "evenodd"] },
  stroke: { inherited: true, initial: "none" },
  "stroke-opacity": { inherited: true, initial: "1" },
  "stroke-width": { inherited: true, initial: "1" },
  "stroke-linecap": { inherited: true, initial: "butt", values: ["butt", "round", "square"] },
  "stroke-linejoin": {
    inherited: true,
    initial: "miter",
    values: ["miter", "miter-clip", "arcs", "round", "bevel"],
  },
  "stroke-miterlimit": { inherited: true, initial: "4" },
  "stroke-dasharray": { inherited: true, initial: "none" },
  "stroke-dashoffset": { inherited: true, initial: "0" },
  "paint-order": { inherited: true, initial: "normal" },
  "vector-effect": { inherited: false, initial: "none" },
  "clip-rule": { inherited: true, initial: "nonzero", values: ["nonzero", "evenodd"] },
  "font-family": { inherited: true, initial: "" },
  "font-size": { inherited: true, initial: "16" },
  "font-style": { inherited: true, initial: "normal" },
  "font-weight": { inherited: true, initial: "400" },
  "text-anchor": { inherited: true, initial: "start", values: ["start", "middle", "end"] },
  visibility: { inherited: true, initial: "visible", values: ["visible", "hidden", "collapse"] },
  "marker-start": { inherited: true, initial: "none" },
  "marker-mid": { inherited: true, initial: "none" },
  "marker-end": { inherited: true, initial: "none" },
  display: { inherited: false, initial: "inline" },
  opacity: { inherited: false, initial: "1" },
  overflow: { inherited: false, initial: "hidden", values: ["visible", "hidden", "scroll", "auto", "clip"] },
  "clip-path": NONE_UNLESS_SET,
  mask: NONE_UNLESS_SET,
  "mask-image": NONE_UNLESS_SET,
  "mask-type": { inherited: false, initial: "luminance" },
  filter: NONE_UNLESS_SET,
} as const satisfies Readonly<Record<string, PropertyRule>>;

export type StyleProperty = keyof typeof STYLE_PROPERTIES;

/** The value of every property for one element, inheritance resolved; keywords in lower case. */
export type Style = Readonly<Record<StyleProperty, string>> & { readonly variables: CssVariables };

export const PROPERTY_NAMES = Object.keys(STYLE_PROPERTIES) as StyleProperty[];

export const INITIAL_STYLE: Style = {
  ...(Object.fromEntries(PROPERTY_NAMES.map((name) => [name, STYLE_PROPERTIES[name].initial])) as Record<
    StyleProperty,
    string
  >),
  variables: CssVariables.NONE,
};

/** The rule of a property. */
export function propertyRule(name: StyleProperty): PropertyRule {
  return STYLE_PROPERTIES[name];
}

/** Whether the reader follows a property; others have no bearing on which areas are filled. */
export function isStyleProperty(name: string): name is StyleProperty {
  return Object.hasOwn(STYLE_PROPERTIES, name);
}
