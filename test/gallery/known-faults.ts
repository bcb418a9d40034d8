/** Faults of drawings that are as they are for now, and why. */
export interface KnownFault {
  readonly fault: RegExp;
  /** Goldens, as `room/name`. */
  readonly of: readonly string[];
  readonly why: string;
}

export const KNOWN_FAULTS: readonly KnownFault[] = [
  {
    fault: /^outside: a circle$/,
    of: ["front/moon-lit", "front/plate-lit"],
    why: "the light's glow ends with the picture",
  },
  {
    fault: /^outside: a rect$/,
    of: [
      "bench/ruler-eighths",
      "bench/ruler-end",
      "bench/ruler-half-mm",
      "bench/ruler-mm",
      "bench/ruler-thirty-seconds",
    ],
    why: "the ruler goes on past what is shown of it",
  },
  {
    fault: /^outside: a path$/,
    of: ["desk/moon-shape-chosen", "desk/moon-traced", "desk/tide-drawn"],
    why: "what a shape has beyond the picture is clipped, with the picture's edge",
  },
];
