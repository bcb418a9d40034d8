import { readFileSync } from "node:fs";
import type { Loader, Plugin } from "esbuild";

/** A file of a library, and what of its classes and namespaces our calls never reach. */
interface Unused {
  readonly file: RegExp;
  readonly loader: Loader;
  /** In words divided by spaces. */
  readonly methods: string;
  /** Within methods that stay: what is sought, and what stands there instead. */
  readonly branches?: readonly (readonly [RegExp, string])[];
}

/** Trees of outlines, open lines, heights of points, arithmetic that only these need; of the packer, what it could do once more. */
const UNUSED: readonly Unused[] = [
  {
    file: /[\\/]clipper2-ts[\\/]dist[\\/]Core\.js$/,
    loader: "js",
    methods: `checkCastInt64 getLineIntersectPtD path2ContainsPath1 pointInPolygon subtract fromPoint64 negate isValid
      midPoint asPath intersects contains crossProductSign triSign getBounds isAlmostZero create createInvalid scale add
      fromPointD width height isEmpty containsRect toString toString64 toStringD reverse64 reverseD
      crossProductD dotProductD`,
    branches: [[/^export const InvalidRect.*$/gm, ""]],
  },
  {
    file: /[\\/]clipper2-ts[\\/]dist[\\/]Engine\.js$/,
    loader: "js",
    methods: `getLevel getIsHole toStringInternal toString addChild addChildD child buildTree buildTreeD checkBounds
      recursiveCheckOwners checkSplitOwner path1InsidePath2 pointInOpPolygon getCleanPath moveSplits addReuseableData
      getBounds startOpenPath setWindCountForOpenPathEdge isContributingOpen findEdgeWithMatchingLocMin
      getCurrYMaximaVertexOpen addSubject addOpenSubject addClip addSubjectPaths addOpenSubjectPaths addClipPaths setZ
      xyEqual getZCallback buildPathsD containsRect scalePathsD scalePathD areaD`,
    branches: [
      // Heights of points.
      [/^ +this\.setZ\(.*\);$/gm, ";"],
      [/,\s+z: [\w.]+ \|\| 0/g, ""],
      [/^ {4}zCallback;$/gm, ""],
      // Trees in place of lists.
      [/^ {8}else \{\n +\/\/ PolyTree[\s\S]*?^ {8}\}$/gm, ""],
    ],
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
    for (const { file, loader, methods, branches = [] } of UNUSED)
      setup.onLoad({ filter: file }, ({ path }) => {
        const source = methods.split(/\s+/).reduce(without, readFileSync(path, "utf8"));
        return {
          contents: branches.reduce((text, [sought, instead]) => replaced(text, sought, instead), source),
          loader,
        };
      });
  },
};

/** A source without a method, or without a function of a namespace: its body ends with the first brace at its own depth. */
function without(source: string, name: string): string {
  const definition = `(?:public |private |static |function )*${name} ?\\([^{}]*\\)[^{}]*\\{$[\\s\\S]*?^ {4}\\}$`;
  return replaced(source, new RegExp(`^ {4,5}(?:${definition}|\\w+\\.${name} = ${name};$)`, "gm"), "");
}

/** @throws Error where there is nothing of that kind any more */
function replaced(source: string, sought: RegExp, instead: string): string {
  const rest = source.replace(sought, instead);
  if (rest === source) throw new Error(`the library has nothing like "${sought.source}" any more`);
  return rest;
}
