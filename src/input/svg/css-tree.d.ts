/** The part of css-tree's interface that this project calls; the package brings no types of its own. */
declare module "css-tree/dist/csstree.esm" {
  export interface Position {
    readonly line: number;
  }

  export interface CssNode {
    readonly type: string;
    readonly loc: { readonly start: Position; readonly end: Position } | null;
    readonly name?: string;
    readonly property?: string;
    readonly important?: boolean | string;
    readonly value?: CssNode | string;
    readonly matcher?: string | null;
    readonly flags?: string | null;
    readonly prelude?: CssNode | null;
    readonly block?: CssNode | null;
    readonly children?: CssNode[] | null;
  }

  export interface ParseOptions {
    readonly context?: "stylesheet" | "declarationList";
    readonly positions?: boolean;
    readonly line?: number;
    readonly onParseError?: (error: Error & { readonly line?: number }) => void;
  }

  export function parse(text: string, options?: ParseOptions): CssNode;
  export function toPlainObject(node: CssNode): CssNode;
  export function generate(node: CssNode): string;
  export const ident: { decode(text: string): string };
}
