import type { Level } from "../../core/kit/kit.ts";
import type { LevelShape } from "../../core/picture/level-map.ts";
import * as say from "../../words/messages.ts";
import { type KitFolder, pictureText } from "../files/named-files.ts";
import { type FieldPath, type Problem, ProblemError, problem } from "../files/problem.ts";
import { nameList } from "../files/short.ts";
import { assignLevels } from "../picture/assign-levels.ts";
import type { Drawn } from "../picture/drawn.ts";
import { readPicture } from "../picture/read-picture.ts";
import type { Selector } from "../picture/schema-selection.ts";
import { unseenLevels } from "../picture/unseen-levels.ts";
import type { PaintedShape, PictureNote, SvgPicture } from "../svg/svg-picture.ts";
import type { LevelChoice } from "./level-choice.ts";

/** What a source draws, and the file below the project that its notes are about. */
export interface DrawnSource extends Drawn {
  readonly file: string | undefined;
}

/** A picture file as it was read. */
export interface PictureFile {
  readonly file: string;
  readonly painted: SvgPicture;
}

/** The picture files of a kit, each read once, whatever number of layers it stands in. */
export class PictureFiles {
  readonly kit: KitFolder;
  readonly #read = new Map<string, PictureFile>();

  constructor(kit: KitFolder) {
    this.kit = kit;
  }

  /** The file that a front matter names at `at`. @throws ProblemError, KitError */
  read(name: string, at: FieldPath): PictureFile {
    const known = this.#read.get(name);
    if (known) return known;
    const { file, text } = pictureText(this.kit, name, at);
    const read = { file, painted: readPicture(file, text, say.checkFieldPicture()) };
    this.#read.set(name, read);
    return read;
  }
}

/** A file that is the whole picture: every level of the kit has its shapes in it. @throws ProblemError, KitError */
export function drawWhole(
  { file, painted }: PictureFile,
  of: Readonly<Record<string, readonly Selector[]>>,
  levels: readonly Level[],
): DrawnSource {
  const map = assignLevels(painted, idsIn(of), levels, file);
  return { ...map, file, notes: [...painted.notes, ...unseenLevels(painted, map, levels)] };
}

/** A file as a layer or a piece of one, at the field `at`. @throws ProblemError, KitError */
export function drawPart(
  { file, painted }: PictureFile,
  choice: LevelChoice,
  {
    at,
    names,
    levels,
  }: { readonly at: FieldPath; readonly names: readonly Selector[] | undefined; readonly levels: readonly Level[] },
): DrawnSource {
  const { width, height } = painted;
  const drawn = (shapes: readonly LevelShape[], notes: readonly PictureNote[]): DrawnSource => {
    return { width, height, file, shapes, notes };
  };
  if (choice.kind === "shapes") {
    const own = levels.filter(({ name }) => name in choice.of);
    const map = inField(at, () => assignLevels(painted, idsIn(choice.of), own, file));
    const numbers = own.map((level) => levels.indexOf(level) + 1);
    return drawn(
      map.shapes.map((shape) => ({ ...shape, level: numbers[shape.level - 1]! })),
      painted.notes,
    );
  }
  const level = choice.kind === "one" ? choice.level : 1;
  return drawn(
    taken(painted, names, at).map(({ rule, rings }) => ({ level, rule, rings })),
    painted.notes,
  );
}

/** The shapes that are named, or all. @throws ProblemError with every name that is none of the picture's */
function taken(
  { shapes, ids }: SvgPicture,
  names: readonly Selector[] | undefined,
  at: FieldPath,
): readonly PaintedShape[] {
  if (!names) return shapes;
  const wanted = new Set(names);
  const strange = [...wanted].filter((name) => typeof name !== "string" || !ids.has(name.slice(1)));
  if (strange.length > 0)
    throw problem([...at, "names"], {
      given: say.frontId({
        id: nameList(strange.map((name) => (typeof name === "string" ? name : JSON.stringify(name)))),
      }),
      allowed: say.frontPictureIds({ ids: nameList([...ids.keys()].map((id) => `#${id}`)) }),
      remedy: say.frontGiveId(),
    });
  return shapes.filter((shape) => shape.ids.some((id) => wanted.has(`#${id}`)));
}

/** Selections as ids, which is what shapes are told apart by. */
function idsIn(of: Readonly<Record<string, readonly Selector[]>>): Record<string, string[]> {
  return Object.fromEntries(
    Object.entries(of).map(([level, selectors]) => [level, selectors.filter((one) => typeof one === "string")]),
  );
}

/** Problems of the picture are told at the layer that it stands in. @throws ProblemError */
function inField<T>(at: FieldPath, make: () => T): T {
  try {
    return make();
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    throw new ProblemError(error.problems.map((one): Problem => ({ ...one, at: movedTo(at, one.at) })));
  }
}

function movedTo(to: FieldPath, at: Problem["at"]): Problem["at"] {
  if ("line" in at) return at;
  return at[0] === "picture" ? [...to, ...at.slice(1)] : at;
}
