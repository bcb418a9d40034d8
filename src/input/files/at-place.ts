import { KitError, type KitMessage } from "./message.ts";
import { type Problem, ProblemError } from "./problem.ts";
import { fieldName } from "./schema-messages.ts";
import type { YamlFile } from "./yaml.ts";

/** Makes something from a front matter; problems on the way become messages with their places in the file. @throws KitError */
export function atPlace<T>(file: string, front: Pick<YamlFile, "placeOf">, make: () => T): T {
  try {
    return make();
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    throw new KitError(error.problems.map((one) => placed(file, front, one)));
  }
}

function placed(file: string, front: Pick<YamlFile, "placeOf">, problem: Problem): KitMessage {
  const { at, given, allowed, remedy } = problem;
  if ("line" in at) return { column: undefined, ...at, given, allowed, remedy };
  return { file, ...front.placeOf(at), field: fieldName(at), given, allowed, remedy };
}
