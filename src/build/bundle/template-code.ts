import nunjucks from "nunjucks";
import type { TemplateNode } from "./template-node.ts";
import { bind, codeOf, type Names } from "./template-value.ts";

/** Reads a template's text by its path below the layouts. */
export type ReadTemplate = (path: string) => string;

/** Where the made code finds `escaped` and `each`. */
export const RUNTIME = "leaflight:template-runtime";

const TOP: Names = new Map();

/**
 * A script module that exports `templates`: for each wanted path a function of a context that gives the filled text,
 * equal to what Nunjucks gives for it. Only what layouts use is known (output, if, for, set, include, imported macros,
 * `safe`, `join`), so that pages carry no template engine. @throws Error for anything else
 */
export function templateModule(wanted: readonly string[], read: ReadTemplate): string {
  const writer = new ModuleWriter(read);
  const entries = wanted.map((path) => `${JSON.stringify(path)}: ${writer.template(path)}`);
  return [
    `import { each, escaped } from ${JSON.stringify(RUNTIME)};`,
    ...writer.functions,
    `export const templates = { ${entries.join(", ")} };`,
  ].join("\n");
}

/** Writes each template and each macro once, as a function. */
class ModuleWriter {
  readonly functions: string[] = [];
  #read: ReadTemplate;
  #names = new Map<string, string>();

  constructor(read: ReadTemplate) {
    this.#read = read;
  }

  /** The name of a template's function. */
  template(path: string): string {
    return this.#once(path, () => {
      const root = this.#parse(path);
      const names = bind(TOP, this.#imports(root));
      return `(c) => ${this.#content(root.children!, names, undefined)}`;
    });
  }

  /** The name of a macro's function. */
  #macro(path: string, name: string): string {
    return this.#once(`${path} ${name}`, () => {
      const macro = this.#parse(path).children!.find((node) => node.typename === "Macro" && node.name!.value === name);
      if (!macro) throw new Error(`${path}: no macro "${name}"`);
      const args = (macro.args!.children as TemplateNode[]).map(
        (arg) => [arg.value as string, `$${arg.value}`] as const,
      );
      return `(${args.map(([, local]) => local).join(", ")}) => ${this.#content(macro.body!.children!, bind(TOP, args), [])}`;
    });
  }

  #once(key: string, write: () => string): string {
    const known = this.#names.get(key);
    if (known) return known;
    const name = `t${this.#names.size}`;
    this.#names.set(key, name);
    this.functions.push(`const ${name} = ${write()};`);
    return name;
  }

  #parse(path: string): TemplateNode {
    return nunjucks.parser.parse(this.#read(path), [], {});
  }

  #imports(root: TemplateNode): [string, string][] {
    return root
      .children!.filter((node) => node.typename === "FromImport")
      .flatMap((node) =>
        (node.names!.children as TemplateNode[]).map((name): [string, string] => [
          `${name.value}()`,
          this.#macro(node.template!.value as string, name.value as string),
        ]),
      );
  }

  /** Nodes as one expression of text. `locals` collects names set in a loop; at the top they go into the context. */
  #content(nodes: readonly TemplateNode[], names: Names, locals: string[] | undefined): string {
    const pieces = nodes.map((node) => this.#piece(node, names, locals)).filter((piece) => piece !== '""');
    return pieces.length === 0 ? '""' : `"" + ${pieces.join(" + ")}`;
  }

  #piece(node: TemplateNode, names: Names, locals: string[] | undefined): string {
    const inside = (body: TemplateNode | null | undefined): string =>
      body ? this.#content(body.children ?? [body], names, locals) : '""';
    switch (node.typename) {
      case "TemplateData":
        return JSON.stringify(node.value);
      case "Output":
      case "NodeList":
        return this.#outputs(node, names, locals);
      case "If":
        return `(${codeOf(node.cond!, names)} ? ${inside(node.body)} : ${inside(node.else_)})`;
      case "For":
        return this.#loop(node, names);
      case "Set":
        return setting(node, names, locals);
      case "Include":
        if (locals) throw new Error("an include in a loop or macro would not see its names");
        return `${this.template(node.template!.value as string)}({ ...c })`;
      case "FromImport":
        return '""';
      default:
        throw new Error(`templates of the page cannot hold ${node.typename}`);
    }
  }

  #outputs(node: TemplateNode, names: Names, locals: string[] | undefined): string {
    const pieces = node.children!.map((child) => {
      if (node.typename === "NodeList" || child.typename === "TemplateData") return this.#piece(child, names, locals);
      if (child.typename === "Filter" && child.name!.value === "safe")
        return `(${codeOf((child.args!.children as TemplateNode[])[0]!, names)} ?? "")`;
      return child.typename === "FunCall" ? codeOf(child, names) : `escaped(${codeOf(child, names)})`;
    });
    return pieces.length === 0 ? '""' : pieces.join(" + ");
  }

  #loop(node: TemplateNode, names: Names): string {
    const item = (node.name as TemplateNode).value as string;
    const locals: string[] = [];
    const inner = bind(names, [
      [item, `$${item}`],
      ["loop", "$loop"],
    ]);
    const body = this.#content(node.body!.children!, inner, locals);
    const declared = locals.length > 0 ? `{ let ${locals.join(", ")}; return ${body}; }` : body;
    const none = node.else_ ? `, () => ${this.#content(node.else_.children!, names, [])}` : "";
    return `each(${codeOf(node.arr!, names)}, ($${item}, $loop) => ${declared}${none})`;
  }
}

function setting(node: TemplateNode, names: Names, locals: string[] | undefined): string {
  const name = node.targets![0]!.value as string;
  const value = codeOf(node.value as TemplateNode, names);
  if (!locals) return `(c.${name} = ${value}, "")`;
  names.set(name, `$${name}`);
  locals.push(`$${name}`);
  return `($${name} = ${value}, "")`;
}
