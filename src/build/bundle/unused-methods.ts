import { readFileSync } from "node:fs";
import type { Loader, Plugin } from "esbuild";

/** A file of a library, and what of its classes and namespaces our calls never reach, in words divided by spaces. */
interface Unused {
  readonly file: RegExp;
  readonly loader: Loader;
  readonly methods: string;
}

/** Trees of outlines, open lines, corners that are not round, callbacks, arithmetic that only these need; of the packer, what it could do once more. */
const UNUSED: readonly Unused[] = [
  {
    file: /[\\/]clipper2-ts[\\/]dist[\\/]Core\.js$/,
    loader: "js",
    methods: `checkCastInt64 getLineIntersectPtD path2ContainsPath1 pointInPolygon subtract fromPoint64 negate isValid
      midPoint asPath intersects contains`,
  },
  {
    file: /[\\/]clipper2-ts[\\/]dist[\\/]Engine\.js$/,
    loader: "js",
    methods: `getLevel getIsHole toStringInternal toString addChild addChildD child buildTree buildTreeD checkBounds
      recursiveCheckOwners checkSplitOwner path1InsidePath2 pointInOpPolygon getCleanPath moveSplits addReuseableData
      getBounds startOpenPath setWindCountForOpenPathEdge isContributingOpen findEdgeWithMatchingLocMin
      getCurrYMaximaVertexOpen addOpenSubject addClip addSubjectPaths addOpenSubjectPaths addClipPaths`,
  },
  {
    file: /[\\/]clipper2-ts[\\/]dist[\\/]Offset\.js$/,
    loader: "js",
    methods: `executeWithCallback calcSolutionCapacity offsetOpenJoined offsetOpenPath ellipse doSquare doMiter doBevel
      getAvgUnitVector normalizeVector hypotenuse almostZero translatePoint reflectPoint intersectPoint getPerpendicD`,
  },
  {
    file: /[\\/]maxrects-packer[\\/]src[\\/]maxrects-packer\.ts$/,
    loader: "ts",
    methods: "addArray sort reset repack next load save",
  },
  {
    file: /[\\/]maxrects-packer[\\/]src[\\/]maxrects-bin\.ts$/,
    loader: "ts",
    methods: "reset repack clone expandFreeRects",
  },
];

/** Leaves out of a page's script what it never calls of a library; a bundler cannot tell, as a class may be asked for anything. */
export const unusedMethods: Plugin = {
  name: "unused-methods",
  setup: (setup) => {
    for (const { file, loader, methods } of UNUSED)
      setup.onLoad({ filter: file }, ({ path }) => ({
        contents: methods.split(/\s+/).reduce(without, readFileSync(path, "utf8")),
        loader,
      }));
  },
};

/** A source without a method, or without a function of a namespace: its body ends with the first brace at its own depth. */
function without(source: string, name: string): string {
  const definition = `(?:public |private |static |function )*${name} ?\\([^{}]*\\)[^{}]*\\{$[\\s\\S]*?^ {4}\\}$`;
  const rest = source.replace(new RegExp(`^ {4,5}(?:${definition}|\\w+\\.${name} = ${name};$)`, "gm"), "");
  if (rest === source) throw new Error(`the library has no "${name}" any more`);
  return rest;
}
