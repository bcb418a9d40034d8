import * as say from "../../words/messages.ts";
import { quoted, ValueError } from "./picture-error.ts";

const NUMBER = /[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/y;
const SEPARATOR = /[\t\n\f\r ]*(?:,[\t\n\f\r ]*)?/y;

/**
 * Numbers apart by white space, one comma or nothing but a sign or a point, as in `points`, `viewBox` and `matrix()`.
 *
 * @throws ValueError naming the first part that is no number
 */
export function parseNumberList(text: string): number[] {
  const source = text.trim();
  const numbers: number[] = [];
  let at = 0;
  while (at < source.length) {
    NUMBER.lastIndex = at;
    const number = NUMBER.exec(source)?.[0];
    const value = Number(number);
    if (number === undefined || !Number.isFinite(value)) {
      const found = quoted(source.slice(at, at + 12));
      throw new ValueError((what) => say.pictureNoNumber({ what, value: quoted(text), found }));
    }
    numbers.push(value);
    SEPARATOR.lastIndex = at + number.length;
    const separator = SEPARATOR.exec(source)![0];
    at += number.length + separator.length;
    if (at >= source.length && separator !== "")
      throw new ValueError((what) => say.pictureEndsInComma({ what, value: quoted(text) }));
  }
  return numbers;
}
