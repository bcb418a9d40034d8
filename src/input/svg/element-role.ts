import type { Element } from "@xmldom/xmldom";
import * as say from "../../words/messages.ts";
import { SHAPE_NAMES } from "./basic-shapes.ts";
import { SVG_NAMESPACE } from "./svg-document.ts";

/** What the reader does with an element; `refused` and `noted` say why. */
export type ElementRole =
  | { readonly kind: "group" | "shape" | "use" | "svg" | "switch" | "text" | "idle" }
  | { readonly kind: "noted"; readonly message: () => string }
  | { readonly kind: "refused"; readonly message: () => string };

/** How an element is rendered. */
export type RenderedKind = "group" | "shape" | "use" | "svg" | "switch" | "text";

/** Letters of a name that a message shows. */
const MOST_LETTERS = 60;

/** Elements that draw nothing where they stand. */
const IDLE =
  "defs symbol title desc metadata style linearGradient radialGradient meshgradient hatch solidcolor stop pattern " +
  "marker clipPath mask filter view cursor font font-face color-profile";

const ANIMATION = "animate animateColor animateMotion animateTransform mpath set discard";

const ROLES: ReadonlyMap<string, ElementRole> = new Map<string, ElementRole>([
  ...IDLE.split(" ").map((name): [string, ElementRole] => [name, { kind: "idle" }]),
  ...SHAPE_NAMES.map((name): [string, ElementRole] => [name, { kind: "shape" }]),
  ...ANIMATION.split(" ").map((name): [string, ElementRole] => [
    name,
    { kind: "noted", message: () => say.pictureAnimation({ name }) },
  ]),
  ["g", { kind: "group" }],
  ["a", { kind: "group" }],
  ["use", { kind: "use" }],
  ["svg", { kind: "svg" }],
  ["switch", { kind: "switch" }],
  ["text", { kind: "text" }],
  ["script", { kind: "noted", message: () => say.pictureScript() }],
]);

/** The role of an element below the root. */
export function roleOf(element: Element): ElementRole {
  const name = element.localName!;
  const role = ROLES.get(name);
  if (element.namespaceURI === SVG_NAMESPACE) return role ?? { kind: "refused", message: refusal(name) };
  const looksLikeContent = !element.namespaceURI && role !== undefined && role.kind !== "idle";
  if (!looksLikeContent) return { kind: "idle" };
  return { kind: "noted", message: () => say.pictureOtherNamespace({ name }) };
}

/**
 * Whether an element is shown at all by what it asks of its reader. Source: SVG 2, "Conditional processing": extensions are
 * unknown here, and of languages English is understood, so that a picture is the same wherever it is read.
 */
export function meetsConditions(element: Element): boolean {
  if (element.hasAttribute("requiredExtensions")) return false;
  const languages = element.getAttribute("systemLanguage");
  if (languages === null) return true;
  return languages.split(",").some((language) => /^\s*en(?:-|\s*$)/i.test(language));
}

/** Of the children of a `switch`, the first that a picture can use. */
export function branchOf(children: readonly Element[]): Element | undefined {
  return children.find(
    (child) =>
      child.namespaceURI === SVG_NAMESPACE &&
      child.localName !== "foreignObject" &&
      roleOf(child).kind !== "idle" &&
      meetsConditions(child),
  );
}

function refusal(name: string): () => string {
  return () => say.pictureUndrawn({ name: name.slice(0, MOST_LETTERS) });
}
