import { type CssNode, generate, type ParseOptions, parse, toPlainObject } from "css-tree/dist/csstree.esm";
import * as say from "../../words/messages.ts";
import { readSelector, type Selector } from "./css-selector.ts";
import { mediaApplies } from "./media.ts";
import { PictureError, PictureLimit } from "./picture-error.ts";
import type { PictureReport } from "./picture-report.ts";

/** One `property: value` of a style sheet or `style` attribute. */
export interface Declaration {
  /** Lower case, but for variables. */
  readonly property: string;
  /** As written, without `!important`. */
  readonly value: string;
  readonly important: boolean;
  readonly line: number;
}

export interface StyleRule {
  readonly selector: Selector;
  readonly declarations: readonly Declaration[];
}

/** At-rules around rules that hold in every program of today. */
const TRANSPARENT_AT_RULES = ["layer", "supports"];

/**
 * The rules of a style sheet in order, one for each selector of a list. What CSS skips is skipped with a note.
 *
 * @param line line in the file where the text starts, 1-based
 * @throws PictureLimit for what is nested beyond all use
 */
export function parseStyleSheet(text: string, line: number, report: PictureReport): StyleRule[] {
  return readRules(parseCss(text, { context: "stylesheet", line }, report), line, report);
}

/** The declarations of a `style` attribute. @throws PictureLimit for what is nested beyond all use */
export function parseDeclarations(text: string, line: number, report: PictureReport): Declaration[] {
  return readDeclarations(parseCss(text, { context: "declarationList", line }, report), line);
}

function readRules(sheet: CssNode, line: number, report: PictureReport): StyleRule[] {
  return (sheet.children ?? []).flatMap((node) => {
    const at = node.loc?.start.line ?? line;
    if (node.type === "Rule") return readRule(node, at, report);
    if (node.type !== "Atrule") return [];
    const name = node.name!.toLowerCase();
    if (name === "import") report.fault(at, say.pictureCssImport());
    const opens =
      TRANSPARENT_AT_RULES.includes(name) ||
      (name === "media" && mediaApplies(node.prelude ? generate(node.prelude) : ""));
    return opens && node.block ? readRules(node.block, at, report) : [];
  });
}

function parseCss(text: string, options: ParseOptions, report: PictureReport): CssNode {
  const node = parse(text, {
    ...options,
    positions: true,
    onParseError: (error) => {
      const at = error.line ?? options.line ?? 1;
      if (error instanceof RangeError) throw new PictureLimit(at, say.pictureCssDepth());
      report.note(at, say.pictureCss({ fault: error.message.toLowerCase() }));
    },
  });
  return toPlainObject(node);
}

function readRule(node: CssNode, line: number, report: PictureReport): StyleRule[] {
  const declarations = readDeclarations(node.block!, line);
  return (node.prelude?.children ?? []).flatMap((selector): StyleRule[] => {
    try {
      const read = readSelector(selector, selector.loc?.start.line ?? line);
      return read ? [{ selector: read, declarations }] : [];
    } catch (error) {
      if (!(error instanceof PictureError)) throw error;
      report.fault(error.line, error.message);
      return [];
    }
  });
}

/** What css-tree could not read stands in it as raw text, of which the report has heard. */
function readDeclarations(block: CssNode, line: number): Declaration[] {
  return (block.children ?? []).flatMap((node): Declaration[] => {
    if (node.type !== "Declaration") return [];
    const at = node.loc?.start.line ?? line;
    const value = typeof node.value === "string" ? node.value : generate(node.value!);
    const written = node.property!;
    const property = written.startsWith("--") ? written : written.toLowerCase();
    return [{ property, value: value.trim(), important: !!node.important, line: at }];
  });
}
