import { tag, text } from "./svg-text.ts";

/** What a path or words look like: attributes of SVG, in the order in which they are written. */
type Look = Readonly<Record<string, string | number | undefined>>;

/** From below to above. */
const LAYERS = ["fields", "shades", "lines"] as const;

/** What words are that say nothing of it (SVG 2, initial values). */
const INITIAL: Look = { "text-anchor": "start", "font-weight": 400 };

interface Words {
  readonly x: number;
  readonly y: number;
  readonly content: string;
  readonly look: Look;
}

/**
 * Paths and words of which many look alike, as on a sheet of strips: paths that look alike in a layer become one, and of words
 * only those say their look that are not like most. Words stand above all paths and keep their order, which is how they are read.
 */
export class Gathered {
  readonly #paths = new Map(LAYERS.map((layer) => [layer, new Map<string, { readonly look: Look; d: string }>()]));
  readonly #words: Words[] = [];

  path(layer: (typeof LAYERS)[number], d: string, look: Look): void {
    const paths = this.#paths.get(layer)!;
    const key = JSON.stringify(look);
    const known = paths.get(key);
    if (known) known.d += d;
    else paths.set(key, { look, d });
  }

  text(x: number, y: number, content: string, look: Look): void {
    this.#words.push({ x, y, content, look });
  }

  get markup(): string {
    const paths = [...this.#paths.values()].flatMap((layer) => [...layer.values()]);
    const usual = usualOf(this.#words.map(({ look }) => look));
    const words = this.#words.map(({ x, y, content, look }) => text(x, y, content, beside(look, usual)));
    return paths.map(({ look, d }) => tag("path", { d, ...look })).join("") + tag("g", usual, words.join(""));
  }
}

/** The look that most have. */
function usualOf(looks: readonly Look[]): Look {
  const alike = [...Map.groupBy(looks, (look) => JSON.stringify(look)).values()];
  return alike.reduce((most, one) => (one.length > most.length ? one : most), [])[0] ?? {};
}

/** What is to be said of a look where another one is usual. */
function beside(look: Look, usual: Look): Look {
  const reset = Object.keys(usual).filter((name) => look[name] === undefined && name in INITIAL);
  const own = Object.entries(look).filter(([name, value]) => usual[name] !== value);
  return Object.fromEntries([...own, ...reset.map((name) => [name, INITIAL[name]])]);
}
