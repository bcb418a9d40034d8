/** A node of a parsed Nunjucks template, as far as the page's templates need it. */
export interface TemplateNode {
  readonly typename: string;
  readonly children?: readonly TemplateNode[];
  /** Text, name or number; of a Set, what is set. */
  readonly value?: unknown;
  readonly name?: TemplateNode;
  readonly args?: TemplateNode;
  readonly body?: TemplateNode;
  readonly else_?: TemplateNode | null;
  readonly cond?: TemplateNode;
  readonly arr?: TemplateNode;
  readonly targets?: readonly TemplateNode[];
  readonly template?: TemplateNode;
  readonly names?: TemplateNode;
  readonly target?: TemplateNode;
  readonly val?: TemplateNode;
  readonly left?: TemplateNode;
  readonly right?: TemplateNode;
  readonly expr?: TemplateNode;
  /** Comparisons: operands with their kind. */
  readonly ops?: readonly { readonly expr: TemplateNode; readonly type: string }[];
}

declare module "nunjucks" {
  /** Not in the package's types: the parser that its compiler uses. */
  const parser: { parse(text: string, extensions: readonly unknown[], options: object): TemplateNode };
}
