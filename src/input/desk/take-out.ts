import { blockEntry, columnOf, entryEnd, flowEntry, isFlow } from "./entries.ts";
import { lineEnd, lineStart, type Splice } from "./splice.ts";
import type { Holder } from "./yaml-walk.ts";

/** Takes an entry out of a list or a map that has others; comments above it stay. */
export function takeOut(text: string, holder: Holder, place: number): Splice {
  return isFlow(holder) ? outOfFlow(text, holder, place) : outOfBlock(text, holder, place);
}

function outOfBlock(text: string, holder: Holder, place: number): Splice {
  const { from, to } = blockEntry(text, holder, place);
  const begin = lineStart(text, from);
  const isOwnLine = text.slice(begin, from).trim() === "";
  if (!isOwnLine) return behindDash(text, holder, place);
  const isOpen = to === text.length && text[to - 1] !== "\n";
  if (!isOpen) return { from: begin, to, put: "" };
  return { from: text.slice(0, begin).replace(/\r?\n$/, "").length, to, put: "" };
}

/** The first entry, which stands behind a dash: the next one comes there. */
function behindDash(text: string, holder: Holder, place: number): Splice {
  const { from, to } = blockEntry(text, holder, place);
  const next = blockEntry(text, holder, place + 1).from;
  const between = text.slice(to, next);
  if (between.trim() === "") return { from, to: next, put: "" };
  const end = entryEnd(text, holder, place);
  return { from: from - /[ \t]*$/.exec(text.slice(0, from))![0].length, to: end, put: "" };
}

function outOfFlow(text: string, holder: Holder, place: number): Splice {
  const { from, to, comma, isAlone } = flowEntry(text, holder, place);
  if (isAlone) return { from: from - columnOf(text, from), to: lineEnd(text, comma ?? to), put: "" };
  const isLast = place === holder.items.length - 1;
  if (!isLast) return { from, to: flowEntry(text, holder, place + 1).from, put: "" };
  return { from: entryEnd(text, holder, place - 1), to, put: "" };
}
