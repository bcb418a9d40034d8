import type { PatternedKit } from "../../../src/core/pattern/patterned-kit.ts";
import { cutDrawings, writtenFiles } from "../../../src/output/cut/cut-files.ts";
import { filesOf } from "../../../src/output/cut/cut-forms.ts";
import { CUT_FORMS } from "../../../src/output/cut/written-forms.ts";
import type { PublishedWindow } from "../../core/light/published-window.ts";
import { discFolder } from "../../core/light/read-disc-kit.ts";
import { publishedText } from "../../core/pattern/published.ts";
import { FIXTURES, fixtureFolder, readKit } from "../../input/kit/kit-folders.ts";

/** A kit with a window, its published pattern, its cut files by name in all forms, and the names of those that a build writes. */
export interface CutKit {
  readonly folder: PatternedKit;
  readonly pattern: PublishedWindow;
  readonly files: ReadonlyMap<string, string>;
  readonly written: readonly string[];
}

function cutKit(folder: PatternedKit): CutKit {
  const { kit, pattern } = folder;
  const names = cutDrawings(kit, pattern).flatMap(({ name }) => CUT_FORMS.map((form) => `${name}-${form}`));
  const files = new Map(filesOfAll(folder));
  if (files.size !== names.length) throw new Error("two files of one name");
  const written = writtenFiles(kit, pattern);
  for (const { name, text } of written) if (files.get(name) !== text) throw new Error(`${name} is written otherwise`);
  return {
    folder,
    pattern: JSON.parse(publishedText(folder)) as PublishedWindow,
    files,
    written: written.map(({ name }) => name),
  };
}

function filesOfAll({ kit, pattern }: PatternedKit): (readonly [string, string])[] {
  return cutDrawings(kit, pattern).flatMap((one) =>
    filesOf(one, CUT_FORMS).map(({ name, text }) => [name, text] as const),
  );
}

const PLATE = '<rect id="rim" x="10" y="10" width="180" height="180"/><circle id="well" cx="90" cy="100" r="60"/>';

export const CUT_KITS: readonly (readonly [name: string, kit: CutKit])[] = [
  ["the demo kit", cutKit(readKit(fixtureFolder("harbour-moon"), FIXTURES))],
  ["discs, flat, with a light", cutKit(discFolder({ insert: { lip: 3, panel: "flat" } }))],
  [
    "a plate in inches, hinge right, on sheets of its own",
    cutKit(
      discFolder({
        light: false,
        shapes: PLATE,
        insert: { lip: "1/8 in", hinge: "right" },
        more: { units: "in", sheets: ["12x12", { name: "Half & half", width: 180, height: 260 }] },
      }),
    ),
  ],
];

/** The file name of a part: small letters, digits and hyphens. */
export function partFile(name: string): string {
  return name.toLowerCase().replaceAll(/[^a-z0-9]+/g, "-");
}
