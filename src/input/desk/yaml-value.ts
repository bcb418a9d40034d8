import type { FieldPath } from "../files/problem.ts";

/** A value as YAML has it, without tags. */
export type YamlValue = string | number | boolean | null | readonly YamlValue[] | YamlMap;
export interface YamlMap {
  readonly [key: string]: YamlValue;
}

export function isList(value: YamlValue | undefined): value is readonly YamlValue[] {
  return Array.isArray(value);
}

export function isYamlMap(value: YamlValue | undefined): value is YamlMap {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** Whether two values are read alike; the order of keys does not count. */
export function sameValue(a: YamlValue | undefined, b: YamlValue | undefined): boolean {
  if (isList(a) && isList(b)) return a.length === b.length && a.every((one, i) => sameValue(one, b[i]));
  if (!isYamlMap(a) || !isYamlMap(b)) return Object.is(a, b);
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length && keys.every((key) => Object.hasOwn(b, key) && sameValue(a[key], b[key]))
  );
}

/** What stands at a path; undefined where nothing does. */
export function valueIn(value: YamlValue | undefined, at: FieldPath): YamlValue | undefined {
  return at.reduce<YamlValue | undefined>((inside, step) => {
    if (isList(inside)) return typeof step === "number" ? inside[step] : undefined;
    return isYamlMap(inside) && Object.hasOwn(inside, String(step)) ? inside[String(step)] : undefined;
  }, value);
}

/**
 * A value with another one at a path, which is made where it is not there; `undefined` takes out what stands there. What is
 * neither a list nor a map gives way to one. A place beyond the end of a list is its end.
 */
export function withValue(
  value: YamlValue | undefined,
  at: FieldPath,
  put: YamlValue | undefined,
): YamlValue | undefined {
  const [step, ...rest] = at;
  if (step === undefined) return put;
  if (put === undefined && valueIn(value, at) === undefined) return value;
  if (typeof step === "number" && !isYamlMap(value)) return listWith(isList(value) ? value : [], step, rest, put);
  const map: YamlMap = isYamlMap(value) ? value : {};
  const inside = withValue(valueIn(map, [step]), rest, put);
  if (inside !== undefined) return { ...map, [step]: inside };
  const { [String(step)]: _, ...others } = map;
  return others;
}

function listWith(list: readonly YamlValue[], place: number, rest: FieldPath, put: YamlValue | undefined): YamlValue {
  const inside = withValue(list[place], rest, put);
  return inside === undefined ? list.toSpliced(place, 1) : list.toSpliced(place, 1, inside);
}
