import { isMap, isSeq, LineCounter } from "yaml";
import type { FieldPath } from "../files/problem.ts";
import { parseYaml } from "../files/yaml-document.ts";
import { YamlFault } from "../files/yaml-fault.ts";
import { loosened } from "./loosen.ts";
import { putIn } from "./put-in.ts";
import { replaced } from "./replace.ts";
import { lineEndOf, spliced } from "./splice.ts";
import { takeOut } from "./take-out.ts";
import { blockLines, keyText } from "./value-text.ts";
import { isList, isYamlMap, sameValue, valueIn, withValue, type YamlValue } from "./yaml-value.ts";
import { type Holder, walkTo, yamlText } from "./yaml-walk.ts";

/**
 * A YAML text with another value at a path, or without what stands there. Only the lines concerned are others: a value is
 * put in the place of the old one, and what is new is written as its neighbours are. What comes out is read again, and where
 * it should mean anything but what was asked, the document's own writer writes it. @throws YamlFault where the text is no YAML
 */
export function editYaml(text: string, at: FieldPath, put: YamlValue | undefined): string {
  const { value } = yamlText(text);
  if (sameValue(valueIn(value, at), put)) return text;
  const wanted = withValue(value, at, put);
  const edited = inText(text, at, put);
  return means(edited, wanted) ? edited : inDocument(text, at, put, wanted);
}

function means(text: string, wanted: YamlValue | undefined): boolean {
  try {
    return sameValue(yamlText(text).value, wanted);
  } catch (error) {
    if (error instanceof YamlFault) return false;
    throw error;
  }
}

function inText(text: string, at: FieldPath, put: YamlValue | undefined): string {
  const loose = loosened(text, at);
  const { missing } = walkTo(yamlText(loose).document, at);
  if (put === undefined) return missing.length > 0 ? text : without(loose, at);
  return missing.length > 0 ? added(loose, at, put) : changed(loose, at, put);
}

/** The text with something where nothing is. */
function added(text: string, at: FieldPath, put: YamlValue): string {
  const { document } = yamlText(text);
  const { node, missing } = walkTo(document, at);
  const [key, ...rest] = missing;
  const value = rest.reduceRight<YamlValue>((inside, step) => nested(step, inside), put);
  if (isMap(node) && node.items.length + Number(node.flow ?? false) > 0)
    return spliced(text, putIn(text, node, { key: String(key), value, place: node.items.length }));
  if (isSeq(node) && typeof key === "number")
    return spliced(text, putIn(text, node, { key: undefined, value, place: node.items.length }));
  const holder = at.slice(0, at.length - missing.length);
  if (holder.length > 0) return whole(text, holder, nested(key!, value));
  const lines = blockLines(`${keyText(String(key))}:`, value, 0).join(lineEndOf(text));
  return text === "" || text.endsWith("\n") ? text + lines : `${text}${lineEndOf(text)}${lines}`;
}

function nested(step: string | number, value: YamlValue): YamlValue {
  return typeof step === "number" ? [value] : { [step]: value };
}

/** The text with another value in the place of one: of a list or a map only what differs. */
function changed(text: string, at: FieldPath, put: YamlValue): string {
  const was = valueIn(yamlText(text).value, at);
  const { node } = walkTo(yamlText(text).document, at);
  if (isYamlMap(was) && isYamlMap(put) && isMap(node) && Object.keys(put).some((key) => Object.hasOwn(was, key))) {
    const keys = [...new Set([...Object.keys(was), ...Object.keys(put)])];
    return keys.reduce((edited, key) => editYaml(edited, [...at, key], put[key]), text);
  }
  if (isList(was) && isList(put) && isSeq(node) && was.length > 0 && put.length > 0)
    return listChanged(text, at, was, put);
  return whole(text, at, put);
}

/** A list from which so many items were taken, and to which others came, in one place. */
function listChanged(text: string, at: FieldPath, was: readonly YamlValue[], put: readonly YamlValue[]): string {
  const before = was.findIndex((one, i) => !sameValue(one, put[i]));
  const begin = before < 0 ? Math.min(was.length, put.length) : Math.min(before, put.length);
  const room = Math.min(was.length, put.length) - begin;
  let behind = 0;
  while (behind < room && sameValue(was.at(-1 - behind), put.at(-1 - behind))) behind += 1;
  const [old, fresh] = [was.length - behind - begin, put.slice(begin, put.length - behind)];
  let edited = text;
  for (let i = old - 1; i >= fresh.length; i -= 1) edited = without(edited, [...at, begin + i]);
  for (const [i, value] of fresh.entries()) {
    if (i < old) edited = editYaml(edited, [...at, begin + i], value);
    else edited = inserted(edited, at, begin + i, value);
  }
  return edited;
}

function inserted(text: string, at: FieldPath, place: number, value: YamlValue): string {
  const loose = loosened(text, at);
  const { node } = walkTo(yamlText(loose).document, at);
  return spliced(loose, putIn(loose, node as Holder, { key: undefined, value, place }));
}

/** The text with one value in the place of another, as a whole. */
function whole(text: string, at: FieldPath, put: YamlValue): string {
  const loose = loosened(text, at, true);
  return spliced(loose, replaced(loose, walkTo(yamlText(loose).document, at), put));
}

function without(text: string, at: FieldPath): string {
  const loose = loosened(text, at, true);
  const { steps } = walkTo(yamlText(loose).document, at);
  const { holder, place } = steps.at(-1)!;
  if (holder.items.length > 1) return spliced(loose, takeOut(loose, holder, place));
  if (at.length === 1) return spliced(loose, { from: holder.range![0], to: holder.range![1], put: "{}" });
  return whole(loose, at.slice(0, -1), isMap(holder) ? {} : []);
}

/** As the package writes the document: what it means is right, how it is written may differ. */
function inDocument(text: string, at: FieldPath, put: YamlValue | undefined, wanted: YamlValue | undefined): string {
  const document = parseYaml(text, new LineCounter());
  const { node, missing } = walkTo(document, at);
  const isHeld = missing.length === 0 || isMap(node) || (isSeq(node) && typeof missing[0] === "number");
  // What can hold nothing by that key gives way to what can.
  const place = isHeld ? at : at.slice(0, at.length - missing.length);
  if (put === undefined) document.deleteIn(at);
  else document.setIn(place, isHeld ? put : valueIn(wanted, place));
  const options = { lineWidth: 0, flowCollectionPadding: true };
  const written = document.toString(options).replace(/\n$/, "").replaceAll("\n", lineEndOf(text));
  if (means(written, wanted)) return written;
  throw new Error(`a front matter cannot be written with another value at ${at.join(".")}`);
}
