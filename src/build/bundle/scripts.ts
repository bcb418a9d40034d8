import { createHash } from "node:crypto";
import { mkdirSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { build } from "esbuild";
import { KeptFiles } from "../kept/kept-files.ts";
import { usedPackage } from "../kept/used-package.ts";
import type { SiteFacts } from "../library/site-facts.ts";
import { CLASSIC_SCRIPT } from "./classic-script.ts";
import { unusedMethods } from "./unused-methods.ts";
import { wordsPlugin } from "./words-plugin.ts";

/** The site's scripts by the name they get below assets/scripts, with where each begins below src/page. */
const SCRIPTS = {
  kit: "kit/kit-entry.ts",
  refit: "kit/refit-entry.ts",
  files: "kit/files-entry.ts",
  corner: "kit/corner-entry.ts",
  packet: "packet/packet-entry.ts",
  "fit-packet": "packet/fit-packet-entry.ts",
  make: "make/make-entry.ts",
  bench: "bench/bench-entry.ts",
  "corner-bench": "bench/corner-entry.ts",
  "why-not": "bench/why-not-entry.ts",
  pieces: "pieces/pieces-entry.ts",
  continue: "pieces/continue-entry.ts",
  "piece-cards": "pieces/cards-entry.ts",
  "take-over": "pieces/take-over-entry.ts",
  "step-figures": "bench/figures-entry.ts",
  finder: "finder/finder-entry.ts",
  judge: "finder/judge-entry.ts",
  measure: "measure/measure-entry.ts",
  "row-code": "finder/row-code-entry.ts",
  offline: "offline/offline-entry.ts",
  room: "room/room-entry.ts",
  "turn-round": "view3d/entry.ts",
  "round-view": "view3d/main.ts",
} as const;

const PAGES = join(import.meta.dirname, "../../page");

/** These hold the whole computation and are fetched over a phone's line while a reader waits. */
const LARGE: readonly string[] = ["refit", "fit-packet", "bench", "offline"] satisfies (keyof typeof SCRIPTS)[];

/**
 * Fields that the libraries for clipping and packing keep inside, with hundreds of mentions: shortened, they make the large
 * scripts a hundredth smaller. None is a name of the DOM or of a file that a page reads.
 */
const INSIDE_LIBRARIES = new RegExp(
  `^(${[
    "outrec|outrecList|(next|prev)In[AS]EL|windCount2?|windDx|frontEdge|backEdge|leftOp|vertexTop|vertex|curX",
    "localMin|intersectList|actives|minimaList|joinOutrecPaths|deleteFromAEL|swapPositionsInAEL|horzSegList",
    "horzJoinList|joinWith|usingPolytree|reverseSolution|addOutPt|addLocalM(in|ax)Poly|fillrule|isHotEdge\\w*",
    "isHorizontal\\w*|_dirty|_allowRotation|allowRotation|_currentBinIndex|freeRects|updateBinSize|verticalExpand",
    "setDirty|addArray|pruneFreeList|exclusiveTag|isSortedMinimaList|getClosestPtOnSegment|path1InsidePath2",
    "executeInternal|clearSolutionOnly|preserveCollinear|isAlmostZero|polytype|nextVertex|intersectEdges",
    "updateEdgeIntoAEL|scanlineSet|currentLocMin|getRealOutRec|useScanlineArray|scanlineHeap|isJoined|isMaxima",
    "insertScanline|checkJoinRight|isFront|checkJoinLeft|hasOpenPaths|perpendicDistFromLineSqrd",
    "upgradeScanlineStructureFromArray|addToHorzSegList|disposeIntersectNodes|isValidAelOrder",
    "boundingBoxesOverlap|setWindCountForClosedPathEdge|swapFrontBackSides|isVerySmallTriangle|ptsReallyClose",
    "prevPrevVertex|swapActives|isLeftBound|currentBotY|resetHorzDirection|edgesAdjacentInAEL|isValidClosedPath",
    "cliptype|fixOutRecPts|setHorzSegHeadingForward|insertLocalMinimaIntoAEL|adjustCurrXAndCopyToSEL",
    "isOpenEndVertex|swapOutrecs|convertHorzSegsToJoins|cleanCollinear|isSamePolyType|getPrevHotEdge",
    "addPathsToVertexList|processIntersectList|isContributingClosed|getCurrYMaximaVertex|startOpenPath",
    "segsIntersect|insert1Before2InSEL|addNewIntersectNode|newOutRec|doHorizontal|isHeading(Right|Left)Horz",
    "buildIntersectList|updateHorzSegment|outrecIsAscending|fixSelfIntersects|popScanline|pushHorz|popHorz",
    "trimHorz|processHorzJoins|vertexList|buildPathsD?|insert(Right|Left)Edge|doTopOfScanbeam|doIntersections",
    "rightOp|uncoupleOutRec|popLocalMinima|extractFromSEL|getMaximaPair|scalePaths?64|hasLocMinAtY|disposeOutPt",
    "areaTriangle|areaOutPt|horzSegSort|getLastOp|doSplitOp|doMaxima|succeeded|isCollinear|crossProduct|setOwner",
    "roundToEven|dotProduct|productsAreEqual|floatingPointTolerance|oversized|checkPrecision|collide|siftDown",
    "defaultMinimumEdgeLength|splitNode|(min|max)_coord|getPolyType|scanlineArr|duplicateOp|getLineIntersectPt",
    "buildPath|setSides|isOpenEnd",
  ].join("|")})$`,
);

/** Where the site's scripts begin. */
export function scriptEntries(): string[] {
  return Object.values(SCRIPTS).map((entry) => join(PAGES, entry));
}

/** Bundles the site's scripts into `assets/scripts`, the same every time; gives back the source files that are in them. */
export async function bundleScripts(output: string, { words, settings }: SiteFacts): Promise<string[]> {
  const folder = join(output, "assets/scripts");
  const { outputFiles, metafile } = await build({
    entryPoints: Object.fromEntries(Object.entries(SCRIPTS).map(([name, entry]) => [name, join(PAGES, entry)])),
    outdir: folder,
    ...CLASSIC_SCRIPT,
    mangleProps: INSIDE_LIBRARIES,
    write: false,
    metafile: true,
    plugins: [wordsPlugin(words, settings.language), unusedMethods],
  });
  mkdirSync(folder, { recursive: true });
  const kept = new KeptFiles(CACHE, "js");
  for (const { path, text } of outputFiles)
    writeFileSync(path, LARGE.includes(basename(path, ".js")) ? await smaller(text, kept) : text);
  kept.close();
  const inputs = Object.values(metafile.outputs).flatMap((one) => Object.entries(one.inputs));
  return inputs.flatMap(([file, { bytesInOutput }]) => (bytesInOutput > 0 ? [file] : []));
}

/** Keeps what was made smaller, by what it was made from. */
const CACHE = ".cache/scripts";

/**
 * Two passes find more than one, and as much as three; a second round of them takes as long again, for 200 bytes. Reading a
 * property does nothing else here, and no function that could be an arrow is called with `new`.
 */
const SMALLER = {
  ecma: 2020,
  compress: { passes: 2, pure_getters: true, unsafe_arrows: true, unsafe_methods: true },
} as const;

/** A bundled script, about 5% smaller than the bundler leaves it; it takes seconds, so it is kept. */
async function smaller(script: string, kept: KeptFiles): Promise<string> {
  const key = KeptFiles.key(
    createHash("sha256").update(`${usedPackage("terser").version} ${JSON.stringify(SMALLER)} ${script}`),
  );
  const whole = kept.take(key);
  if (whole) return whole.toString("utf8");
  const { minify } = await import("terser");
  const made = (await minify(script, SMALLER)).code!;
  kept.put(key, Buffer.from(made));
  return made;
}
