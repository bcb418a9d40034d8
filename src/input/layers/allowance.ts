import type { LevelShape } from "../../core/picture/level-map.ts";
import * as say from "../../words/messages.ts";
import { type Advice, type FieldPath, type ProblemError, problem } from "../files/problem.ts";

/** Points of all sources of a kit: as many as one picture file may have. */
const MOST_POINTS = 5_000_000;

/** Photographs and scans that are traced for one kit; each may take some seconds. */
const MOST_TRACED = 60;

/** How much the sources of one kit may draw in all, however often they name a file. */
export class Allowance {
  #points = 0;
  #traced = 0;
  #over: ProblemError | undefined;

  /** Before a source is drawn. @throws ProblemError where there is too much: the same one from then on */
  begin(isTraced: boolean, at: FieldPath): void {
    if (this.#over) throw this.#over;
    this.#traced += isTraced ? 1 : 0;
    if (this.#traced <= MOST_TRACED) return;
    const allowed = say.layerTraced({ most: MOST_TRACED });
    this.#stop(at, { given: say.layerTracedMore(), allowed, remedy: say.layerTraceOnce() });
  }

  /** Counts what a source drew. @throws ProblemError where there is too much */
  spend(shapes: readonly LevelShape[], at: FieldPath): void {
    for (const { rings } of shapes) for (const ring of rings) this.#points += ring.length;
    if (this.#points <= MOST_POINTS) return;
    this.#stop(at, { given: say.frontCrowded(), allowed: say.layerPoints(), remedy: say.frontSimplify() });
  }

  #stop(at: FieldPath, advice: Advice): never {
    this.#over = problem(at, advice);
    throw this.#over;
  }
}
