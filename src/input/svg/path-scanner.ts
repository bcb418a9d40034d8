import * as say from "../../words/messages.ts";
import { quoted, ValueError } from "./picture-error.ts";

/** How many arguments one round of a command takes. */
const ARGUMENTS: Readonly<Record<string, number>> = { M: 2, L: 2, H: 1, V: 1, C: 6, S: 4, Q: 4, T: 2, A: 7, Z: 0 };

const SPACE = /[\t\n\f\r ]*/y;
const NUMBER = /[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/y;
const FLAG = /[01]/y;

/**
 * Cuts path data into commands and their arguments.
 * Source: SVG 2, paths, "The grammar for path data". An arc's flag is one character, so `a1 1 0 01.5.5` is complete.
 */
export class PathScanner {
  readonly #text: string;
  #at = 0;

  constructor(text: string) {
    this.#text = text;
    this.#skipSpace();
  }

  get atEnd(): boolean {
    return this.#at >= this.#text.length;
  }

  get startsWithMove(): boolean {
    return /[Mm]/.test(this.#text[this.#at] ?? "");
  }

  /** The next command letter. @throws ValueError when something else stands there */
  command(): string {
    const letter = this.#text[this.#at] ?? "";
    if (!Object.hasOwn(ARGUMENTS, letter.toUpperCase())) throw this.unexpected("command");
    this.#at += 1;
    this.#skipSpace();
    return letter;
  }

  /** The arguments after a command letter, one array for each round; one empty array for `Z`. */
  rounds(letter: string): number[][] {
    const kind = letter.toUpperCase();
    if (kind === "Z") return [[]];
    const rounds = [this.#round(kind)];
    while (this.#moreFollows()) rounds.push(this.#round(kind));
    return rounds;
  }

  /** An error that shows what stands here in place of what is expected. */
  unexpected(expected: "command" | "flag" | "move" | "number"): ValueError {
    const rest = this.#text.slice(this.#at, this.#at + 12).trim();
    const before = this.#text.slice(Math.max(0, this.#at - 20), this.#at);
    const at = this.#at + 1;
    return new ValueError((what) => {
      const fault = { what, found: rest === "" ? say.picturePathEnd() : quoted(rest), at, expected };
      return before.trim() === ""
        ? say.picturePathFault(fault)
        : say.picturePathFaultAfter({ ...fault, before: quoted(before) });
    });
  }

  #round(kind: string): number[] {
    const values: number[] = [];
    while (values.length < ARGUMENTS[kind]!) {
      if (values.length > 0) this.#skipComma();
      values.push(kind === "A" && (values.length === 3 || values.length === 4) ? this.#flag() : this.#number());
    }
    this.#skipSpace();
    return values;
  }

  #moreFollows(): boolean {
    if (this.#text[this.#at] === ",") {
      this.#skipComma();
      return true;
    }
    return /[-+.\d]/.test(this.#text[this.#at] ?? "");
  }

  #number(): number {
    const token = this.#match(NUMBER);
    const value = Number(token);
    if (token === "" || !Number.isFinite(value)) {
      this.#at -= token.length;
      throw this.unexpected("number");
    }
    return value;
  }

  #flag(): number {
    const token = this.#match(FLAG);
    if (token === "") throw this.unexpected("flag");
    return Number(token);
  }

  #skipComma(): void {
    this.#skipSpace();
    if (this.#text[this.#at] === ",") this.#at += 1;
    this.#skipSpace();
  }

  #skipSpace(): void {
    this.#match(SPACE);
  }

  #match(pattern: RegExp): string {
    pattern.lastIndex = this.#at;
    const token = pattern.exec(this.#text)?.[0] ?? "";
    this.#at += token.length;
    return token;
  }
}
