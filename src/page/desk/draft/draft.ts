import { type Edit, editText } from "../../../input/desk/edit.ts";
import { frontValue } from "../../../input/desk/front-value.ts";
import { type ChangedLine, lineDifference } from "../../../input/desk/line-difference.ts";
import type { DeskText } from "../../../input/desk/protocol.ts";
import { clashes, editsBetween, type ValueEdit } from "../../../input/desk/value-edits.ts";

/**
 * A text on the disk and what the maker makes of it. Nothing is written here: a draft is asked for its `text`, is told what
 * was `written`, and `meets` what others wrote. It has no page and no server.
 *
 *     const draft = new Draft(found);
 *     draft.change([{ at: ["fit", "height"], mm: 120 }], "height");   // while a handle is dragged, always with its name
 *     draft.rest();                                                    // the handle is let go: the next change is another one
 *     draft.undo(); draft.redo();
 *     draft.difference();                                              // lines to show before writing
 *     const { text, mark } = draft.toWrite();                          // … sent; when that was done:
 *     draft.written(text, markOfIt);
 *     draft.meet(found);                                               // the file is another one now; see `meeting`
 */
export class Draft {
  #disk: DeskText;
  /** What the steps begin with. */
  #base: string;
  #steps: Step[] = [];
  /** Steps that are done; those behind can be done again. */
  #done = 0;
  /** Steps that were done when it was written; undefined where no step has that text. */
  #kept: number | undefined = 0;
  #isResting = true;
  #met: Met | undefined;
  readonly #meetingOf = latest((met: Met, mine: string): Meeting => {
    return { ...met, canMerge: mergedText(met.common, mine, met.found.text) !== undefined };
  });

  constructor(disk: DeskText) {
    this.#disk = disk;
    this.#base = disk.text;
  }

  get file(): string {
    return this.#disk.file;
  }

  /** The text as the maker wants it. */
  get text(): string {
    return this.#done === 0 ? this.#base : this.#steps[this.#done - 1]!.after;
  }

  /** The text on the disk, as far as is known. */
  get disk(): DeskText {
    return this.#disk;
  }

  get isChanged(): boolean {
    return this.text !== this.#disk.text;
  }

  /** How many changes lie between the text and the one on the disk; at least one where they differ. */
  get changes(): number {
    return this.isChanged ? Math.max(1, Math.abs(this.#done - (this.#kept ?? 0))) : 0;
  }

  /** Steps that lie behind the text, each of which can be undone. */
  get steps(): number {
    return this.#done;
  }

  get canUndo(): boolean {
    return this.#done > 0;
  }

  get canRedo(): boolean {
    return this.#done < this.#steps.length;
  }

  /** What others wrote while the maker had changes of her own, until she says what to do. */
  get meeting(): Meeting | undefined {
    return this.#met && this.#meetingOf(this.#met, this.text);
  }

  /**
   * Changes fields. Changes of one name are one step until it rests. @returns whether the text could take them: one without a
   * front matter that can be read cannot
   */
  change(edits: readonly Edit[], name?: string): boolean {
    const going = this.#going(name);
    const before = going?.before ?? this.text;
    const all = [...(going?.edits.filter((one) => !edits.some((other) => isSamePlace(one, other))) ?? []), ...edits];
    const after = editText(before, all);
    if (after === undefined) return false;
    this.#step({ name, edits: all, before, after }, going !== undefined);
    return true;
  }

  /** Takes another text, as one step: what was typed, or a text from elsewhere. */
  replace(text: string, name?: string): void {
    const going = this.#going(name);
    this.#step({ name, edits: [], before: going?.before ?? this.text, after: text }, going !== undefined);
  }

  /** What was changed by one name is done: another change by it is another step. */
  rest(): void {
    this.#isResting = true;
  }

  undo(): void {
    if (this.canUndo) this.#done -= 1;
    this.#isResting = true;
  }

  redo(): void {
    if (this.canRedo) this.#done += 1;
    this.#isResting = true;
  }

  /** Lines that writing would change. */
  difference(): ChangedLine[] {
    return lineDifference(this.#disk.text, this.text);
  }

  /** What to write, in the place of which text. */
  toWrite(): DeskText {
    return { file: this.file, text: this.text, mark: this.#disk.mark };
  }

  /** A text of this draft was written. */
  written(text: string, mark: string): void {
    this.#disk = { file: this.file, text, mark };
    this.#kept = text === this.text ? this.#done : undefined;
    this.#isResting = true;
  }

  /**
   * The file on the disk is another one now. Where nothing was changed here, or the same, that is the text; otherwise there is
   * a `meeting`, and the maker goes on with her own text until she has decided.
   */
  meet(found: DeskText): void {
    const mine = this.text;
    const common = this.#met?.common ?? this.#disk.text;
    if (found.text === mine) {
      this.#met = undefined;
      this.written(mine, found.mark);
    } else if (!this.isChanged) this.#begin(found);
    else if (found.text === common) {
      this.#met = undefined;
      this.#disk = found;
    } else this.#met = { found, common };
  }

  /**
   * Ends a meeting: `keep` her text, which would take the place of theirs when it is written; `take` theirs; or `merge` both,
   * where they changed different fields. To take and to merge are steps that can be undone.
   */
  decide(what: "keep" | "take" | "merge"): void {
    if (!this.#met) return;
    const { found, common } = this.#met;
    const mine = this.text;
    const after = what === "merge" ? mergedText(common, mine, found.text) : found.text;
    if (after === undefined) return;
    this.#disk = found;
    this.#met = undefined;
    this.#kept = undefined;
    this.#isResting = true;
    if (what === "keep") return;
    this.#step({ name: undefined, edits: [], before: mine, after }, false);
    if (what === "take") this.#kept = this.#done;
  }

  /** The step that a change of a name goes on with. */
  #going(name: string | undefined): Step | undefined {
    const last = this.#steps[this.#done - 1];
    const canGoOn = !this.#isResting && !this.canRedo && this.#done !== this.#kept;
    return canGoOn && name !== undefined && last?.name === name ? last : undefined;
  }

  /** Does a step, in the place of the last one where it goes on with that; one that changes nothing is none. */
  #step(step: Step, goesOn: boolean): void {
    this.#isResting = false;
    const isNone = step.after === step.before;
    if (isNone && !goesOn) return;
    this.#steps = [...this.#steps.slice(0, goesOn ? this.#done - 1 : this.#done), ...(isNone ? [] : [step])];
    this.#done = this.#steps.length;
    if (this.#kept !== undefined && this.#kept > this.#done) this.#kept = undefined;
  }

  #begin(found: DeskText): void {
    this.#disk = found;
    this.#base = found.text;
    this.#steps = [];
    this.#done = 0;
    this.#kept = 0;
    this.#met = undefined;
  }
}

/** One thing that the maker did. */
interface Step {
  readonly name: string | undefined;
  /** None where the whole text was replaced. */
  readonly edits: readonly Edit[];
  readonly before: string;
  readonly after: string;
}

/** What others wrote, and what both began with. */
interface Met {
  readonly found: DeskText;
  readonly common: string;
}

/** What others wrote, beside what the maker has. */
export interface Meeting extends Met {
  /** Whether both can be had: they changed different fields, and both texts can be read. */
  readonly canMerge: boolean;
}

/** A function that knows what it gave last. */
function latest<A, B, T>(make: (a: A, b: B) => T): (a: A, b: B) => T {
  let known: { readonly a: A; readonly b: B; readonly made: T } | undefined;
  return (a, b) => {
    if (known?.a !== a || known.b !== b) known = { a, b, made: make(a, b) };
    return known.made;
  };
}

function isSamePlace(one: Edit, other: Edit): boolean {
  return one.at.length === other.at.length && one.at.every((step, i) => step === other.at[i]);
}

/** Their text with the maker's own changes of its front matter; undefined where both changed one thing. */
function mergedText(common: string, mine: string, theirs: string): string | undefined {
  const own = fieldChanges(common, mine);
  const others = fieldChanges(common, theirs);
  if (!own || !others || clashes(own, others).length > 0) return undefined;
  return editText(theirs, own);
}

/** What differs in the front matters of two texts; undefined where that is not all that differs, or one cannot be read. */
function fieldChanges(was: string, is: string): ValueEdit[] | undefined {
  const [before, after] = [frontValue(was), frontValue(is)];
  return before === undefined || after === undefined ? undefined : editsBetween(before, after);
}
