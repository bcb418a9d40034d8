import type { PatternedKit } from "../../../src/core/pattern/patterned-kit.ts";
import { type CutFile, cutFiles } from "../../../src/output/cut/cut-files.ts";
import type { PublishedWindow } from "../../core/light/published-window.ts";
import { discFolder } from "../../core/light/read-disc-kit.ts";
import { publishedText } from "../../core/pattern/published.ts";
import { FIXTURES, fixtureFolder, readKit } from "../../input/kit/kit-folders.ts";

/** A kit with a window, its published pattern and its cut files by name. */
export interface CutKit {
  readonly folder: PatternedKit;
  readonly pattern: PublishedWindow;
  readonly files: ReadonlyMap<string, string>;
}

function cutKit(folder: PatternedKit): CutKit {
  const list: CutFile[] = cutFiles(folder.kit, folder.pattern);
  const files = new Map(list.map((file) => [file.name, file.text]));
  if (files.size !== list.length) throw new Error("two files of one name");
  return { folder, pattern: JSON.parse(publishedText(folder)) as PublishedWindow, files };
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
