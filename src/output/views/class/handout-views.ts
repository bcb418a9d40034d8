import type { FittingSeat } from "../../../core/class/fit-seats.ts";
import type { KitClass } from "../../../core/class/kit-class.ts";
import { awaitsNoKnife, isKnifeFree } from "../../../core/class/seat-way.ts";
import { patternedAs } from "../../../core/pattern/patterned-kit.ts";
import type { Caution } from "../../../core/plan/caution.ts";
import * as say from "../../../words/messages.ts";
import { type AnyKitView, viewAnyKit } from "../any-kit-view.ts";

/** A kit of a class, made in one way: what every seat that makes it so is told alike. */
export interface Handout {
  /** The kit's title, and that it is made without a knife. */
  readonly name: string;
  readonly view: AnyKitView;
}

/**
 * The kits that seats of a class make, or may choose, each in its own way, and in the other way where a seat makes it so.
 * `kits` are the class's, `fitting` its seats that fit.
 */
export function handoutsOf(
  kits: readonly AnyKitView[],
  {
    plan,
    fitting,
    cautions,
  }: {
    readonly plan: KitClass;
    readonly fitting: readonly FittingSeat[];
    readonly cautions: readonly Caution[];
  },
): Handout[] {
  return kits.flatMap((view) => {
    const own = isMadeItsWay(view, plan) ? [inUnits(view, plan, cautions)] : [];
    const other = fitting.find(({ seat, pattern }) => seat.kit.slug === view.slug && wayOf(pattern) !== view.way);
    const views = other ? [...own, viewAnyKit(patternedAs(other.kit, other.pattern, other.findings), cautions)] : own;
    return views.map((one) => ({ name: nameOf(one), view: one }));
  });
}

/** Whether a seat makes a kit as its author does, or may still choose it. */
function isMadeItsWay({ slug, way }: AnyKitView, { seats, awaiting }: KitClass): boolean {
  return (
    seats.some((seat) => seat.kit.slug === slug && isKnifeFree(seat) === (way === "corner")) ||
    awaiting.some(
      (seat) => seat.kit === undefined || (seat.kit.slug === slug && awaitsNoKnife(seat) === (way === "corner")),
    )
  );
}

function wayOf({ corner }: FittingSeat["pattern"]): AnyKitView["way"] {
  return corner ? "corner" : "cut";
}

function nameOf({ kit, way }: AnyKitView): string {
  return way === "cut" ? kit.title : say.handoutFolded({ kit: kit.title });
}

/** A kit as it is shown in the class's units; its book stays its own. */
function inUnits(view: AnyKitView, { units }: KitClass, cautions: readonly Caution[]): AnyKitView {
  const { kit, pattern, findings } = view;
  return kit.units === units ? view : viewAnyKit(patternedAs({ ...kit, units }, pattern, findings), cautions);
}
