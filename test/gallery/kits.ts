import type { PatternedKit } from "../../src/core/pattern/patterned-kit.ts";
import { discFolder } from "../core/light/read-disc-kit.ts";
import { FIXTURES, fixtureFolder, readKit, readMadeKit } from "../input/kit/kit-folders.ts";

const fixture = (slug: string) => (): PatternedKit => readKit(fixtureFolder(slug), FIXTURES);

const SMALL_PICTURE =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 60 60"><path id="leaf" d="M30 2L58 30L30 58L2 30Z"/></svg>';

/** A pocket book with a single border leaf on each side, two levels, folded once; with what is stated otherwise of its fit. */
const small = (fit: object = {}): PatternedKit =>
  readMadeKit(
    {
      title: "Small leaf",
      summary: "A leaf in a pocket book.",
      picture: { file: "picture.svg", levels: { leaf: ["#leaf"] } },
      levels: [
        { name: "leaf", depth: 6 },
        { name: "ground", depth: 14, background: true },
      ],
      book: { leafHeight: 105, leafWidth: 70, blockThickness: 6, leaves: 48, pageOneLeaf: 1, direction: "ltr" },
      fit: { borderLeaves: [1, 1], head: 30, height: 50, opening: "solve", markStep: 0.5, foldStyle: "single", ...fit },
    },
    SMALL_PICTURE,
    "small",
  );

const SIX = [12, 20, 28, 40, 52, 70];
const HILLS = SIX.slice(0, 5).map((_, i) => `<circle id="hill-${i + 1}" cx="100" cy="100" r="${25 + 17 * i}"/>`);

/** A tall book with a rounded spine, six levels that lie inside each other, folded in steps. */
const tall = (): PatternedKit =>
  readMadeKit(
    {
      title: "Tall hills",
      summary: "Six levels in a tall book.",
      picture: {
        file: "picture.svg",
        levels: Object.fromEntries(SIX.slice(0, 5).map((_, i) => [`hill ${i + 1}`, [`#hill-${i + 1}`]])),
      },
      levels: SIX.map((depth, i) =>
        i < 5 ? { name: `hill ${i + 1}`, depth } : { name: "sky", depth, background: true },
      ),
      book: { leafHeight: 340, leafWidth: 230, blockThickness: 34, leaves: 180, pageOneLeaf: 7, direction: "ltr" },
      fit: {
        borderLeaves: [20, 12],
        head: 70,
        height: 200,
        opening: "solve",
        spine: "rounded",
        markStep: 0.5,
        foldStyle: "stepped",
      },
    },
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 200 200">${HILLS.toReversed().join("")}</svg>`,
    "tall",
  );

const PLATE = '<rect id="rim" x="10" y="10" width="180" height="180"/><circle id="well" cx="90" cy="100" r="60"/>';

/** In inches and from right to left, with a flat window whose hinge is at the right, and a light. */
const plate = (): PatternedKit =>
  discFolder({
    shapes: PLATE,
    book: { direction: "rtl", leaves: 120, blockThickness: "3/4 in", leafHeight: "8 1/2 in", lastPage: 200 },
    fit: { foldStyle: "stepped" },
    insert: { lip: "1/8 in", hinge: "right", panel: "flat" },
    more: { units: "in" },
  });

/** The same with six motifs in cards of several colours: flat and raised, turned, mirrored, stretched, over the frame. */
const six = (): PatternedKit =>
  discFolder({
    shapes: PLATE,
    book: { direction: "rtl", leaves: 120, blockThickness: "3/4 in", leafHeight: "8 1/2 in", lastPage: 200 },
    fit: { foldStyle: "stepped" },
    insert: {
      lip: "1/8 in",
      hinge: "right",
      panel: "flat",
      card: "cream",
      motifs: [
        { motif: "lantern", covers: "light", card: "black" },
        { motif: "gull", card: "white", turn: -20 },
        { motif: "gull", card: { colour: "rgb(80 120 160)", name: "storm-blue" }, mirror: true, at: ["30%", "25%"] },
        { motif: "grass", card: "green", at: ["20%", "80%"], width: "2 in" },
        { motif: "grass", card: "green", at: ["75%", "82%"], width: "2 1/2 in", height: "3/4 in", spacer: 2 },
        { motif: "gull", card: "red", at: ["85%", "15%"], width: "1 in", spacer: 0 },
      ],
    },
    more: { units: "in" },
  });

/** A window higher than any sheet, without a light. */
const tallWindow = (): PatternedKit =>
  discFolder({
    light: false,
    book: { leafHeight: 340, leafWidth: 240, leaves: 150, blockThickness: 40, lastPage: 280 },
    fit: { height: 300, head: 20 },
    insert: { lip: 5 },
  });

const READ = {
  gull: fixture("little-gull"),
  boat: fixture("evening-boat"),
  moon: fixture("harbour-moon"),
  tide: fixture("tide-and-lamp"),
  small: () => small(),
  "small-along": () => small({ view: "along", spine: "rounded" }),
  "small-lost": () => small({ lostLeaves: [15, 31] }),
  "small-scissors": () => small({ cutWith: "scissors" }),
  tall,
  plate,
  six,
  "tall-window": tallWindow,
} as const;

export type KitName = keyof typeof READ;
export const KIT_NAMES = Object.keys(READ) as KitName[];

/** Kits with a window, and those of them with a light. */
export const WINDOWED: readonly KitName[] = ["moon", "plate", "tall-window"];
export const LIT: readonly KitName[] = ["moon", "plate"];

const read = new Map<KitName, PatternedKit>();

/** A kit of the gallery with its pattern, read when it is first asked for. */
export function galleryKit(name: KitName): PatternedKit {
  const found = read.get(name) ?? READ[name]();
  read.set(name, found);
  return found;
}
