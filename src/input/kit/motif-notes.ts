import type { Kit } from "../../core/kit/kit.ts";
import { curveOf } from "../../core/pattern/fan-of.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import { type MotifFault, motifFaults } from "../../core/window/motif-faults.ts";
import { sizeOfPart } from "../../core/window/part.ts";
import { formatSize } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import { type Problem, stopAt } from "../files/problem.ts";
import { fieldName } from "../files/schema-messages.ts";

/** What may disappoint in the motifs of a kit's window, in sentences for its author. @throws ProblemError where one cannot be set */
export function motifNotes(kit: Kit, pattern: Pattern): string[] {
  const { window, pocket } = pattern;
  if (!window) return [];
  const faults = motifFaults(window, pocket, curveOf(pattern));
  const problems = faults.flatMap((fault) => problemOf(fault, kit, pattern) ?? []);
  stopAt(problems);
  return faults.flatMap((fault) => noteOf(fault, kit) ?? []);
}

function problemOf(fault: MotifFault, { motifs, units }: Kit, { window }: Pattern): Problem | undefined {
  if (fault.kind === "loose") {
    const motif = motifs[fault.motif]!.name;
    const given = say.motifLoose({ pieces: fault.pieces, motif });
    return { at: fieldOf(fault.motif), given, allowed: say.motifLooseAllowed(), remedy: say.motifLooseRemedy() };
  }
  if (fault.kind !== "off-window") return undefined;
  const { width, height } = sizeOfPart(window!.frame);
  const at = [...fieldOf(fault.motif), "at"];
  const room = { width: formatSize(width, units), height: formatSize(height, units) };
  return {
    at,
    given: say.motifOff({ motif: motifs[fault.motif]!.name }),
    allowed: say.motifOffAllowed(room),
    remedy: say.motifOffRemedy({ field: fieldName(at) }),
  };
}

function noteOf(fault: MotifFault, { motifs, units }: Kit): string | undefined {
  switch (fault.kind) {
    case "loose":
    case "off-window":
      return undefined;
    case "light-shows": {
      const { beside, through } = fault;
      if (motifs.length === 0) return say.noteLightBare();
      return say.noteLightShows({ beside: percent(beside), through: percent(through) });
    }
  }
  const about = { field: fieldName(fieldOf(fault.motif)), motif: motifs[fault.motif]!.name };
  switch (fault.kind) {
    case "beyond-frame":
      return say.noteMotifBeyond({ ...about, by: formatSize(fault.by, units) });
    case "overlap":
      return say.noteMotifsOverlap({ ...about, other: motifs[fault.other]!.name });
    case "narrow":
      return say.noteMotifNarrow({ ...about, least: formatSize(fault.least, units) });
  }
}

function fieldOf(motif: number): (string | number)[] {
  return ["insert", "motifs", motif];
}

function percent(share: number): string {
  return say.unitPercent({ share: Math.round(share * 100) });
}
