import type { Level } from "../../core/kit/kit.ts";
import { tidy } from "../../core/units/length.ts";
import * as say from "../../words/messages.ts";
import { problem } from "../files/problem.ts";
import { indexOfTwin } from "../files/twins.ts";
import type { FrontMatter } from "./schema.ts";

/** The levels with their depths; whether each lies deeper than the one before is a question of the fit. @throws ProblemError */
export function resolveLevels(data: FrontMatter): Level[] {
  const lines = data.gauge?.lines ?? [];
  checkLines(lines);
  const levels = data.levels.map((level, i): Level => {
    const depth = depthOf(level, i, lines);
    const line = level.line ?? numberOfLine(lines.length > 0 ? lines : undefined, depth, i);
    return { name: level.name, depth, line, background: level.background ?? false };
  });
  checkNames(levels);
  checkBackground(levels);
  return levels;
}

function checkLines(lines: readonly number[]): void {
  const back = lines.findIndex((line, i) => i > 0 && line <= lines[i - 1]!);
  if (back < 0) return;
  throw problem(["gauge", "lines", back], {
    given: say.frontLinesOutOfOrder({ line: tidy(lines[back]!, 2), before: tidy(lines[back - 1]!, 2) }),
    allowed: say.frontLinesOutward(),
    remedy: say.frontOrderLines(),
  });
}

function depthOf(level: FrontMatter["levels"][number], i: number, lines: readonly number[]): number {
  if ((level.depth === undefined) === (level.line === undefined)) {
    const neither = level.depth === undefined;
    throw problem(["levels", i], {
      given: neither ? say.frontNoDepth() : say.frontDepthAndLine(),
      allowed: say.frontDepthOrLine(),
      remedy: neither ? say.frontAddDepth() : say.frontRemoveOne(),
    });
  }
  if (level.depth !== undefined) return level.depth;
  const depth = lines[level.line! - 1];
  if (depth !== undefined) return depth;
  throw problem(["levels", i, "line"], {
    given: say.checkGiven({ value: String(level.line) }),
    allowed: lines.length > 0 ? say.frontGaugeLines({ lines: lines.length }) : say.frontNoGaugeLines(),
    remedy: say.frontAddGaugeLine(),
  });
}

/** Without a gauge of its own, a kit's levels are its gauge. */
function numberOfLine(lines: readonly number[] | undefined, depth: number, i: number): number | undefined {
  if (!lines) return i + 1;
  const index = lines.findIndex((line) => Math.abs(line - depth) < 1e-6);
  return index < 0 ? undefined : index + 1;
}

function checkNames(levels: readonly Level[]): void {
  const at = indexOfTwin(levels.map(({ name }) => name));
  if (at < 0) return;
  throw problem(["levels", at, "name"], {
    given: say.frontLevelTwice({ level: levels[at]!.name }),
    allowed: say.frontLevelNames(),
    remedy: say.frontRename(),
  });
}

function checkBackground(levels: readonly Level[]): void {
  const count = levels.filter((level) => level.background).length;
  if (count === 1) return;
  throw problem(["levels"], {
    given: say.frontBackgrounds({ count }),
    allowed: say.frontOneBackground(),
    remedy: count === 0 ? say.frontAddBackground() : say.frontRemoveBackground(),
  });
}
