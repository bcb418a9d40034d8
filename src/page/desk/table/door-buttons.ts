import type { Edit } from "../../../input/desk/edit.ts";
import { deskButtons, motifChoice } from "../../../output/parts/desk/buttons.ts";
import { html } from "../../../output/parts/markup.ts";
import * as say from "../../../words/messages.ts";
import type { Around } from "./fields-view.ts";
import type { Shown } from "./shown.ts";

/** What hangs a window in the hole or takes it away. */
export function doorAround({ kit }: Shown): Around {
  if (!kit.insert) {
    const front = kit.levels[0]!.name;
    return {
      below: deskButtons([{ does: "add", text: say.deskKitDoorAdd() }], say.deskKitDoorNone()),
      hands: { add: () => [{ at: ["insert", "outline"], value: front }] },
    };
  }
  return {
    below: deskButtons([{ does: "out", text: say.deskKitDoorOut() }]),
    hands: { out: () => [{ at: ["insert"], value: undefined }] },
  };
}

/** What sets a motif on the window, and what takes the chosen one out. */
export function motifAround({ kit, stated, shelf }: Shown, motif: number | undefined): Around {
  if (!kit.insert) return {};
  const motifs = stated.insert?.motifs ?? [];
  const set = (name: string): readonly Edit[] => [{ at: ["insert", "motifs", motifs.length], value: { motif: name } }];
  const chosen = motif === undefined ? undefined : kit.motifs[motif];
  if (!chosen || motif === undefined) return { below: motifChoice(shelf), set };
  const own = ["insert", "motifs", motif] as const;
  return {
    above: html`<h3 dir="auto">${chosen.name}</h3>`,
    below: html`${deskButtons([{ does: "out", text: say.deskKitMotifOut() }])}${motifChoice(shelf)}`,
    set,
    hands: { out: () => [{ at: motifs.length > 1 ? own : ["insert", "motifs"], value: undefined }] },
  };
}
