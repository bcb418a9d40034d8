import type { Element } from "@xmldom/xmldom";
import * as say from "../../words/messages.ts";
import { SHAPE_NAMES } from "./basic-shapes.ts";
import { SVG_NAMESPACE } from "./svg-document.ts";

/** What the reader does with an element; `refused` and `noted` say why. */
export type ElementRole =
  | { readonly kind: "group" | "shape" | "use" | "idle" }
  | { readonly kind: "noted"; readonly message: () => string }
  | { readonly kind: "refused"; readonly message: () => string };

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

function refusal(name: string): () => string {
  return () => (name === "svg" ? say.pictureInnerSvg() : say.pictureUndrawn({ name: name.slice(0, MOST_LETTERS) }));
}
