import { deskButtons } from "../../../output/parts/desk/buttons.ts";
import * as say from "../../../words/messages.ts";
import type { Around } from "./fields-view.ts";
import { lampEdits } from "./lamp-fields.ts";
import type { Shown } from "./shown.ts";

/** What puts a light in or takes it out, and what lets it find its floor by itself. */
export function lampAround(shown: Shown): Around {
  const { light } = shown.kit;
  if (!light) {
    return {
      below: deskButtons([{ does: "add", text: say.deskKitLampAdd() }], say.deskKitLampNone()),
      hands: { add: () => lampEdits(shown) },
    };
  }
  const auto = light.floor === "auto" ? [] : [{ does: "auto", text: say.deskKitLampAuto() }];
  return {
    below: deskButtons([...auto, { does: "out", text: say.deskKitLampOut() }]),
    hands: {
      auto: () => [{ at: ["light", "floor"], value: "auto" }],
      out: () => [{ at: ["light"], value: undefined }],
    },
  };
}
