import { type CssNode, generate, type ParseOptions, parse, toPlainObject } from "css-tree";
import * as say from "../../words/messages.ts";
import { type CompoundSelector, readSelector } from "./css-selector.ts";
import { PictureError, quoted } from "./picture-error.ts";

/** One `property: value` of a style sheet or `style` attribute. */
export interface Declaration {
  /** Lower case. */
  readonly property: string;
  /** As written, without `!important`. */
  readonly value: string;
  readonly important: boolean;
  readonly line: number;
}

export interface StyleRule {
  readonly selector: CompoundSelector;
  readonly declarations: readonly Declaration[];
}

/** At-rules that have no bearing on which areas are filled. */
const IDLE_AT_RULES = ["charset", "font-face", "keyframes", "-webkit-keyframes", "counter-style", "page"];

/**
 * The rules of a style sheet in order, one for each selector of a list.
 *
 * @param line line in the file where the text starts, 1-based
 * @throws PictureError for malformed CSS, selectors beyond compound ones and at-rules such as `@import` or `@media`
 */
export function parseStyleSheet(text: string, line: number): StyleRule[] {
  return readRules(parseCss(text, { context: "stylesheet", line }), line);
}

/** The declarations of a `style` attribute. @throws PictureError for malformed CSS */
export function parseDeclarations(text: string, line: number): Declaration[] {
  return readDeclarations(parseCss(text, { context: "declarationList", line }), line);
}

function readRules(sheet: CssNode, line: number): StyleRule[] {
  return (sheet.children ?? []).flatMap((node) => {
    const at = node.loc?.start.line ?? line;
    if (node.type === "Rule") return readRule(node, at);
    if (node.type === "Atrule" && !IDLE_AT_RULES.includes(node.name!.toLowerCase())) {
      throw new PictureError(at, say.pictureCssAtRule({ name: node.name! }));
    }
    return [];
  });
}

function parseCss(text: string, options: ParseOptions): CssNode {
  const node = parse(text, {
    ...options,
    positions: true,
    onParseError: (error) => {
      const fault = error.message.toLowerCase();
      const message = error instanceof RangeError ? say.pictureCssDepth() : say.pictureCss({ fault });
      throw new PictureError(error.line ?? options.line ?? 1, message);
    },
  });
  return toPlainObject(node);
}

function readRule(node: CssNode, line: number): StyleRule[] {
  const declarations = readDeclarations(node.block!, line);
  return (node.prelude?.children ?? []).map((selector) => ({
    selector: readSelector(selector, selector.loc?.start.line ?? line),
    declarations,
  }));
}

function readDeclarations(block: CssNode, line: number): Declaration[] {
  return (block.children ?? []).flatMap((node): Declaration[] => {
    const at = node.loc?.start.line ?? line;
    // css-tree keeps a stray semicolon as raw text.
    if (node.type === "Raw" && /^[\s;]*$/.test(String(node.value))) return [];
    if (node.type !== "Declaration") {
      throw new PictureError(at, say.pictureCssDeclaration({ text: quoted(generate(node)) }));
    }
    const value = typeof node.value === "string" ? node.value : generate(node.value!);
    return [{ property: node.property!.toLowerCase(), value: value.trim(), important: !!node.important, line: at }];
  });
}
