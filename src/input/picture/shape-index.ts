import { foldName } from "../svg/calling.ts";
import { hexOf } from "../svg/colour.ts";
import type { Calling, PaintedShape } from "../svg/svg-picture.ts";
import type { Selector } from "./selection.ts";

/** What a selector looks for. */
type Wanted = { readonly kind: "id" | "name" | "class" | "fill" | "stroke"; readonly value: string };

/** What a selector means; undefined for a colour that is none. */
export function wantedBy(selector: Selector): Wanted | undefined {
  if (typeof selector === "string") {
    if (selector.startsWith("#")) return { kind: "id", value: selector.slice(1) };
    if (/^\.\S+$/.test(selector)) return { kind: "class", value: selector.slice(1) };
    return { kind: "name", value: foldName(selector) };
  }
  const kind = "fill" in selector ? "fill" : "stroke";
  const value = hexOf(("fill" in selector ? selector.fill : selector.stroke).trim().toLowerCase());
  return value === undefined ? undefined : { kind, value };
}

/** Selectors with what each picks shapes for. */
export class ShapeIndex<T> {
  readonly #found = new Map<string, T>();

  /** What another selector of the same meaning is there for; undefined where this is the first. */
  add(wanted: Wanted, pick: T): T | undefined {
    const key = keyOf(wanted);
    const other = this.#found.get(key);
    if (other === undefined) this.#found.set(key, pick);
    return other;
  }

  /**
   * What a shape is picked for: by the nearest element around it, itself first, that any selector names; of one element by
   * id before name before class before colour.
   */
  pickOf({ called, paint, colour }: PaintedShape): T | undefined {
    for (const [i, calling] of called.entries()) {
      const found = this.#byCalling(calling);
      if (found !== undefined) return found;
      if (i > 0 || colour === undefined) continue;
      const byColour = this.#found.get(keyOf({ kind: paint, value: colour }));
      if (byColour !== undefined) return byColour;
    }
    return undefined;
  }

  #byCalling({ id, names, classes }: Calling): T | undefined {
    const wanted: Wanted[] = [
      ...(id === undefined ? [] : [{ kind: "id", value: id } as const]),
      ...names.map((value) => ({ kind: "name", value }) as const),
      ...classes.map((value) => ({ kind: "class", value }) as const),
    ];
    for (const one of wanted) {
      const found = this.#found.get(keyOf(one));
      if (found !== undefined) return found;
    }
    return undefined;
  }
}

/**
 * What each shape is picked for, as {@link ShapeIndex.pickOf}. The stroke of a shape that is picked by nothing goes with its
 * fill, and the fill with its stroke, as they are one shape to who drew them.
 */
export function picksOf<T>(index: ShapeIndex<T>, shapes: readonly PaintedShape[]): (T | undefined)[] {
  const own = shapes.map((shape) => index.pickOf(shape));
  return shapes.map((shape, i) => {
    if (own[i] !== undefined) return own[i];
    const other = [i - 1, i + 1].find((at) => shapes[at]?.called === shape.called);
    return other === undefined ? undefined : own[other];
  });
}

function keyOf({ kind, value }: Wanted): string {
  return `${kind} ${value}`;
}
