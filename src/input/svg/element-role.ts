import type { Element } from "@xmldom/xmldom";
import { SHAPE_NAMES } from "./basic-shapes.ts";
import { SVG_NAMESPACE } from "./svg-document.ts";

/** What the reader does with an element; `refused` and `noted` say why. */
export type ElementRole =
  | { readonly kind: "group" | "shape" | "use" | "idle" }
  | { readonly kind: "noted"; readonly message: string }
  | { readonly kind: "refused"; readonly message: string };

/** Elements that draw nothing where they stand. */
const IDLE =
  "defs symbol title desc metadata style linearGradient radialGradient meshgradient hatch solidcolor stop pattern " +
  "marker clipPath mask filter view cursor font font-face color-profile";

const ANIMATION = "animate animateColor animateMotion animateTransform mpath set discard";

/** What to do in place of elements that cannot be honoured. */
const ADVICE: Readonly<Record<string, string>> = {
  text: "convert the text to paths",
  image: "trace the image to paths",
  svg: "put its content in a <g> with a transform",
  switch: "keep only the branch to be shown",
  foreignObject: "remove it",
};

const ROLES: ReadonlyMap<string, ElementRole> = new Map<string, ElementRole>([
  ...IDLE.split(" ").map((name): [string, ElementRole] => [name, { kind: "idle" }]),
  ...SHAPE_NAMES.map((name): [string, ElementRole] => [name, { kind: "shape" }]),
  ...ANIMATION.split(" ").map((name): [string, ElementRole] => [
    name,
    { kind: "noted", message: `<${name}> is ignored; the picture is taken at rest` },
  ]),
  ["g", { kind: "group" }],
  ["a", { kind: "group" }],
  ["use", { kind: "use" }],
  ["script", { kind: "noted", message: "<script> is ignored; the picture is taken as written" }],
]);

/** The role of an element below the root. */
export function roleOf(element: Element): ElementRole {
  const name = element.localName!;
  const role = ROLES.get(name);
  if (element.namespaceURI === SVG_NAMESPACE) return role ?? { kind: "refused", message: refusal(name) };
  const looksLikeContent = !element.namespaceURI && role !== undefined && role.kind !== "idle";
  if (!looksLikeContent) return { kind: "idle" };
  return { kind: "noted", message: `<${name}> is ignored: it is outside the SVG namespace` };
}

function refusal(name: string): string {
  const advice = Object.hasOwn(ADVICE, name) ? ADVICE[name] : undefined;
  if (advice === undefined) return `<${name}> cannot be drawn: remove it or correct its name`;
  return name === "svg"
    ? `<svg> inside the picture cannot be drawn: ${advice}`
    : `<${name}> cannot be drawn: ${advice}`;
}
