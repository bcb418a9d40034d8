import type { AnyKitView } from "../views/any-kit-view.ts";
import { CORNER_PARTS } from "./corner-kit-parts.ts";
import { KIT_PARTS, type KitPart } from "./kit-parts.ts";
import type { Html } from "./markup.ts";

/** A part of a kit's page, whichever way its leaves are made. */
export function kitPart(view: AnyKitView, name: KitPart): Html {
  return view.way === "cut" ? KIT_PARTS[name](view) : CORNER_PARTS[name](view);
}
