import { tag, text } from "./svg-text.ts";

/** What a path or words look like: attributes of SVG, in the order in which they are written. */
type Look = Readonly<Record<string, string | number | undefined>>;

/** From below to above. */
const LAYERS = ["fields", "shades", "lines"] as const;

/**
 * Paths and words of which many look alike, as on a sheet of strips: paths that look alike in a layer become one, and words say
 * only what is not usual. Words stand above all paths and keep their order, which is how they are read.
 */
export class Gathered {
  /** Path data of each layer, by what it is painted as. */
  readonly #layers = LAYERS.map(() => new Map<string, string>());
  readonly #usual: Look;
  #words = "";

  /** `usual` is what words look like where they do not say it themselves. */
  constructor(usual: Look) {
    this.#usual = usual;
  }

  path(layer: (typeof LAYERS)[number], d: string, look: Look): void {
    const paths = this.#layers[LAYERS.indexOf(layer)]!;
    const painted = tag("path", look);
    paths.set(painted, (paths.get(painted) ?? "") + d);
  }

  text(x: number, y: number, content: string, own: Look): void {
    this.#words += text(x, y, content, own);
  }

  get markup(): string {
    const paths = this.#layers.flatMap((layer) => [...layer]);
    return (
      paths.map(([painted, d]) => painted.replace("<path", `<path d="${d}"`)).join("") +
      tag("g", this.#usual, this.#words)
    );
  }
}
