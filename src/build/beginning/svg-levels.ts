/** Which shapes of a drawing belong to which level, as front matter states it. */
export interface SvgLevels {
  readonly levels: Readonly<Record<string, unknown>>;
  /** Names of the levels, front to back. */
  readonly names: readonly string[];
}

/** The levels that a drawing has by itself; a drawing of one kind of shape is one level, called `only`. */
export function svgLevels(_text: string, only: string): SvgLevels {
  return { levels: { level: only }, names: [only] };
}
