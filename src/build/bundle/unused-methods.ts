import { readFileSync } from "node:fs";
import type { Plugin } from "esbuild";

/** Files of libraries, and the methods of their classes that our calls never reach: trees of outlines, open lines, callbacks. */
const UNUSED: readonly { readonly file: RegExp; readonly loader: "js" | "ts"; readonly methods: readonly string[] }[] = [
  {
    file: /[\\/]clipper2-ts[\\/]dist[\\/]Engine\.js$/,
    loader: "js",
    methods: [
      "getLevel",
      "getIsHole",
      "toStringInternal",
      "toString",
      "addChild",
      "addChildD",
      "child",
      "area",
      "addReuseableData",
      "getBounds",
      "startOpenPath",
      "setWindCountForOpenPathEdge",
      "isContributingOpen",
      "findEdgeWithMatchingLocMin",
      "getCurrYMaximaVertexOpen",
      "buildTree",
      "buildTreeD",
      "recursiveCheckOwners",
      "checkBounds",
      "checkSplitOwner",
      "addOpenSubject",
      "addClip",
      "addSubjectPaths",
      "addOpenSubjectPaths",
      "addClipPaths",
    ],
  },
  {
    file: /[\\/]clipper2-ts[\\/]dist[\\/]Offset\.js$/,
    loader: "js",
    methods: ["executeWithCallback", "offsetOpenJoined", "offsetOpenPath", "ellipse"],
  },
  {
    file: /[\\/]maxrects-packer[\\/]src[\\/]maxrects-packer\.ts$/,
    loader: "ts",
    methods: ["repack", "next", "load", "save"],
  },
  {
    file: /[\\/]maxrects-packer[\\/]src[\\/]maxrects-bin\.ts$/,
    loader: "ts",
    methods: ["repack", "clone", "expandFreeRects"],
  },
];

/** Leaves methods of libraries out of a page's script that it never calls; a bundler cannot tell, as a class may be asked for anything. */
export const unusedMethods: Plugin = {
  name: "unused-methods",
  setup: (setup) => {
    for (const { file, loader, methods } of UNUSED)
      setup.onLoad({ filter: file }, ({ path }) => ({
        contents: methods.reduce(without, readFileSync(path, "utf8")),
        loader,
      }));
  },
};

/** A class's source without a method, whose body ends with the first brace at the method's own depth. */
function without(source: string, method: string): string {
  const definition = new RegExp(`^ {4}(?:public |private )?(?:static )?${method} ?\\([^{}]*\\)[^{}]*\\{$[\\s\\S]*?^ {4}\\}$`, "gm");
  const rest = source.replace(definition, "");
  if (rest === source) throw new Error(`the library has no method "${method}" any more`);
  return rest;
}
