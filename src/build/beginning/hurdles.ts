import { basename } from "node:path";
import type { Hurdle } from "../../core/beginning/brought.ts";
import { partsOf } from "../../input/files/format-message.ts";
import { KitError, type KitMessage } from "../../input/files/message.ts";
import { ProblemError } from "../../input/files/problem.ts";
import * as say from "../../words/messages.ts";
import { foreseen } from "../errors/foreseen.ts";
import { NoFit } from "./no-fit.ts";

/** So many are told; the first ones are what there is to do. */
const MOST = 8;

/** What stands in the way of a new kit; its picture goes by the name that it was brought under. @throws what is no such thing */
export function hurdlesOf(error: unknown, name: string): Hurdle[] {
  if (error instanceof NoFit) return [alone(say.newNoFitShort()), ...error.last.slice(0, 1).map(hurdleIn(name))];
  if (error instanceof KitError) return error.messages.slice(0, MOST).map(hurdleIn(name));
  if (error instanceof ProblemError) return error.problems.map(({ at: _, ...advice }) => ({ place: name, ...advice }));
  const told = foreseen(error);
  if (told === undefined) throw error;
  return [alone(told)];
}

/** Its own index.md is not written yet, so a field of it is all that can be named. */
function hurdleIn(name: string): (message: KitMessage) => Hurdle {
  return (message) => {
    const { field, given, allowed, remedy } = partsOf(message);
    const file = basename(message.file);
    const inPicture = file === "index.md" ? undefined : [name, message.line].filter((part) => part !== undefined);
    return { place: inPicture?.join(":") ?? field, given, allowed, remedy };
  };
}

function alone(given: string): Hurdle {
  return { place: undefined, given, allowed: "", remedy: "" };
}
