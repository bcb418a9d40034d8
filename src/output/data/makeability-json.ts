import type { Kit } from "../../core/kit/kit.ts";
import type { Assessment } from "../../core/makeability/assessment.ts";
import type { Makeability, TroubleWithWays } from "../../core/makeability/makeability.ts";
import type { SeenBothWays } from "../../core/makeability/silhouette-seen.ts";
import { tidy } from "../../core/units/length.ts";
import { troubleText } from "../../words/findings/makeability.ts";
import { jsonLines } from "./json-lines.ts";

/** Most places of a kind that are listed; the troubles count all. */
const LISTED = 500;

/**
 * How well a picture can be made on its book (`leaflight/makeability/1`): mm, mm² and radians, to 0.0001. Keys and tokens
 * are fixed; sentences are in the site's language.
 */
export function makeabilityJson(kit: Kit, made: Makeability): string {
  return jsonLines({
    schema: "leaflight/makeability/1",
    kit: kit.slug,
    title: kit.title,
    ...(kit.versions[0] ? { version: kit.versions[0].version } : {}),
    unit: "mm",
    picture: rounded({
      left: made.place.left,
      head: made.place.top,
      width: made.place.width,
      height: made.place.height,
    }),
    pitch: rounded(made.pitch),
    opening: rounded(made.opening),
    restingOpening: rounded(made.resting),
    levels: kit.levels.map((_, k) => rounded(levelJson(kit, made, k))),
    merged: made.slivers.slice(0, LISTED).map(rounded),
    narrow: made.narrow.slice(0, LISTED).map(rounded),
    fullLeaves: made.full.map(rounded),
    troubles: made.troubles.map((one) => rounded(troubleJson(one))),
    sentences: made.troubles.map(({ trouble }) => troubleText(trouble, made, kit)),
  });
}

/** The same of a kit whose corners are folded: how much of its outline is seen, folded and cut, and no troubles by places. */
export function cornerMakeabilityJson(kit: Kit, seen: SeenBothWays | undefined): string {
  return jsonLines({
    schema: "leaflight/makeability/1",
    kit: kit.slug,
    title: kit.title,
    ...(kit.versions[0] ? { version: kit.versions[0].version } : {}),
    unit: "mm",
    ...(seen ? { outline: { folded: rounded(seen.folded), ...(seen.cut ? { cut: rounded(seen.cut) } : {}) } } : {}),
    troubles: [],
    sentences: [],
  });
}

function levelJson({ levels }: Kit, { areas, seen, reach }: Assessment, k: number): unknown {
  const { kept, hidden, unreached, changed, share, hiddenAt } = seen?.levels[k] ?? {};
  return {
    level: k + 1,
    name: levels[k]!.name,
    area: areas[k]!,
    ...(seen ? { kept, hidden, unreached, changed, share, hiddenAt } : {}),
    gutterRoom: reach[k]!.gutterRoom,
    missing: reach[k]!.missing,
  };
}

function troubleJson({ trouble, ways }: TroubleWithWays): unknown {
  return { ...trouble, ways };
}

/** All numbers inside a value to four decimals. */
function rounded(value: unknown): unknown {
  if (typeof value === "number") return tidy(value, 4);
  if (Array.isArray(value)) return value.map(rounded);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, rounded(inner)]));
}
