import type { FieldPath } from "../files/problem.ts";
import type { Edit } from "./edit.ts";
import { isList, isYamlMap, sameValue, type YamlValue } from "./yaml-value.ts";

/** A change of a value, as `Edit` has it. */
export type ValueEdit = Extract<Edit, { readonly value: unknown }>;

/** The changes that make one value of another: of maps, and of lists of one length, only what differs. */
export function editsBetween(was: YamlValue | undefined, is: YamlValue | undefined, at: FieldPath = []): ValueEdit[] {
  if (sameValue(was, is)) return [];
  if (isYamlMap(was) && isYamlMap(is)) {
    const keys = [...new Set([...Object.keys(was), ...Object.keys(is)])];
    return keys.flatMap((key) => editsBetween(was[key], is[key], [...at, key]));
  }
  if (isList(was) && isList(is) && was.length === is.length)
    return is.flatMap((one, i) => editsBetween(was[i], one, [...at, i]));
  return [{ at, value: is }];
}

/** Of two people’s changes of one value, the paths of the first where the second wants something else. */
export function clashes(mine: readonly ValueEdit[], theirs: readonly ValueEdit[]): FieldPath[] {
  return mine.filter((one) => theirs.some((other) => areApart(one, other))).map(({ at }) => at);
}

/** Whether one of two changes is at or below the place of the other, and they do not want the same. */
function areApart(one: ValueEdit, other: ValueEdit): boolean {
  const [short, long] = one.at.length <= other.at.length ? [one, other] : [other, one];
  if (!short.at.every((step, i) => String(step) === String(long.at[i]))) return false;
  return short.at.length !== long.at.length || !sameValue(short.value, long.value);
}
