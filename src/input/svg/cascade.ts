import type { Element } from "@xmldom/xmldom";
import * as say from "../../words/messages.ts";
import { lineOf } from "./attribute.ts";
import type { CssVariables } from "./css-variables.ts";
import { MOST_DECLARATIONS } from "./picture-bounds.ts";
import { PictureError, PictureLimit, quoted } from "./picture-error.ts";
import type { PictureReport } from "./picture-report.ts";
import { RuleIndex } from "./rule-index.ts";
import { INITIAL_STYLE, isStyleProperty, PROPERTY_NAMES, propertyRule, type Style } from "./style-property.ts";
import { type Declaration, parseDeclarations, type StyleRule } from "./style-sheet.ts";

/** What an element itself says about each property, after the cascade. */
export type DeclaredStyle = ReadonlyMap<string, Declaration>;

interface Candidate extends Declaration {
  /** Attributes below sheets below the style attribute (CSS Cascade 5; SVG 2, "Presentation attributes"). */
  readonly origin: 0 | 1 | 2;
  readonly specificity: number;
}

const MARKERS = ["marker-start", "marker-mid", "marker-end"];

/** What the elements of a picture say themselves; an element is asked once, however often it is shown. */
export class Cascade {
  readonly #rules: RuleIndex;
  readonly #known = new Map<Element, DeclaredStyle>();
  readonly #report: PictureReport;
  #declarations = 0;

  constructor(sheet: readonly StyleRule[], report: PictureReport) {
    this.#rules = new RuleIndex(sheet);
    this.#report = report;
  }

  /** @throws PictureLimit where styles are beyond all use */
  declaredBy(element: Element): DeclaredStyle {
    const found = this.#known.get(element);
    if (found) return found;
    const candidates = [
      ...fromAttributes(element),
      ...fromRules(this.#rules.rulesFor(element)),
      ...fromStyleAttribute(element, this.#report),
    ];
    this.#declarations += candidates.length;
    if (this.#declarations > MOST_DECLARATIONS) throw new PictureLimit(lineOf(element), say.pictureManyStyles());
    const declared = winnersOf(candidates);
    this.#known.set(element, declared);
    return declared;
  }
}

/** The winning declaration of every property: by importance, origin, specificity, then order. */
function winnersOf(candidates: readonly Candidate[]): DeclaredStyle {
  const winners = new Map<string, Candidate>();
  for (const candidate of candidates.flatMap(expandShorthand)) {
    const winner = winners.get(candidate.property);
    if (winner === undefined || !outweighs(winner, candidate)) winners.set(candidate.property, candidate);
  }
  return winners;
}

/**
 * The style of an element under a parent of style `parent`; for the root that is the initial style.
 *
 * @throws PictureError for a value that its property does not have
 */
export function computedStyle(declared: DeclaredStyle, parent: Style): Style {
  if (declared.size === 0) return inheritedStyle(parent);
  const variables = parent.variables.within(declared);
  const entries = PROPERTY_NAMES.map((name) => {
    const rule = propertyRule(name);
    const declaration = declared.get(name);
    const value = declaration === undefined ? "unset" : readValue(declaration, variables);
    if (value === "initial") return [name, rule.initial];
    if (value === "inherit") return [name, parent[name]];
    if (value === "unset" || value === "revert" || value === "revert-layer") {
      return [name, rule.inherited ? parent[name] : rule.initial];
    }
    if (rule.values !== undefined && !rule.values.includes(value)) {
      throw new PictureError(
        declaration!.line,
        say.pictureUnknownValue({ property: name, value: quoted(value), values: rule.values.join(", ") }),
      );
    }
    return [name, value];
  });
  return { ...INITIAL_STYLE, ...Object.fromEntries(entries), variables };
}

const inherited = new WeakMap<Style, Style>();

/** The style of elements that say nothing themselves: most of those in a group share it. */
function inheritedStyle(parent: Style): Style {
  const found = inherited.get(parent);
  if (found) return found;
  const entries = PROPERTY_NAMES.map((name) => [
    name,
    propertyRule(name).inherited ? parent[name] : propertyRule(name).initial,
  ]);
  const style: Style = { ...INITIAL_STYLE, ...Object.fromEntries(entries), variables: parent.variables };
  inherited.set(parent, style);
  return style;
}

function readValue({ property, value, line }: Declaration, variables: CssVariables): string {
  if (value === "") throw new PictureError(line, say.pictureNoValue({ property }));
  const replaced = variables.replaceIn(value);
  if (replaced === undefined) {
    throw new PictureError(line, say.pictureCssVariable({ property, value: quoted(value) }));
  }
  return /url\(/i.test(replaced) || property === "font-family" ? replaced : replaced.toLowerCase();
}

function fromAttributes(element: Element): Candidate[] {
  return Array.from(element.attributes)
    .filter(({ namespaceURI, name }) => !namespaceURI && isStyleProperty(name))
    .map((attribute) => ({
      property: attribute.name,
      value: attribute.value.trim(),
      important: false,
      line: lineOf(attribute),
      origin: 0,
      specificity: 0,
    }));
}

function fromRules(rules: readonly StyleRule[]): Candidate[] {
  return rules.flatMap(({ selector, declarations }) =>
    declarations.map((d): Candidate => ({ ...d, origin: 1, specificity: selector.specificity })),
  );
}

function fromStyleAttribute(element: Element, report: PictureReport): Candidate[] {
  const attribute = element.getAttributeNode("style");
  if (attribute === null) return [];
  return parseDeclarations(attribute.value, lineOf(attribute), report).map(
    (d): Candidate => ({ ...d, origin: 2, specificity: 0 }),
  );
}

function expandShorthand(candidate: Candidate): Candidate[] {
  if (candidate.property !== "marker") return [candidate];
  return MARKERS.map((property) => ({ ...candidate, property }));
}

function outweighs(winner: Candidate, later: Candidate): boolean {
  if (winner.important !== later.important) return winner.important;
  if (winner.origin !== later.origin) return winner.origin > later.origin;
  return winner.specificity > later.specificity;
}
