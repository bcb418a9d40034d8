import {
  type BinaryExpression,
  type Expression,
  type LogicalExpression,
  type PrivateIdentifier,
  parseSync,
  Visitor,
} from "oxc-parser";

/** One small change of a source text that a test should notice. */
export interface Fault {
  /** Line of the source, from 1. */
  readonly line: number;
  readonly was: string;
  readonly now: string;
  /** The whole source with the fault in it. */
  readonly source: string;
}

/** Any node, with its place in the source in UTF-16 units. */
interface Placed {
  readonly start: number;
  readonly end: number;
}

const OTHER_OPERATORS: Readonly<Record<string, readonly string[]>> = {
  "<": ["<=", ">"],
  "<=": ["<", ">"],
  ">": [">=", "<"],
  ">=": [">", "<"],
  "===": ["!=="],
  "!==": ["==="],
  "+": ["-"],
  "-": ["+"],
  "*": ["/"],
  "/": ["*"],
  "%": ["*"],
  "&&": ["||"],
  "||": ["&&"],
  "+=": ["-="],
  "-=": ["+="],
};

/** Operators of which one side can be left out. */
const TERMS = ["+", "-", "*", "/", "??"];

const OTHER_METHODS: Readonly<Record<string, string>> = {
  min: "max",
  max: "min",
  floor: "ceil",
  ceil: "floor",
  round: "floor",
  sin: "cos",
  cos: "sin",
  some: "every",
  every: "some",
  find: "findLast",
  findLast: "find",
};

/** Methods that give as much as they are given, so that a call can be left out. */
const LEFT_OUT = ["filter", "toSorted", "toReversed", "slice"];

/**
 * Every fault that can be planted in a TypeScript source, in its order: a comparison turned or moved by its bound, an
 * operator changed, a term or condition left out, a constant, a branch or a method changed.
 */
export function plantFaults(source: string): readonly Fault[] {
  const { program } = parseSync("fault.ts", source);
  const faults: Fault[] = [];
  const types: Placed[] = [];
  const plant = ({ start, end }: Placed, now: string): void => {
    // What is a type's no test can notice.
    if (types.some((type) => type.start <= start && end <= type.end)) return;
    const line = source.slice(0, start).split("\n").length;
    faults.push({ line, was: source.slice(start, end), now, source: source.slice(0, start) + now + source.slice(end) });
  };
  const text = ({ start, end }: Placed): string => source.slice(start, end);
  const operator = (node: Placed & { left: Placed; right: Placed; operator: string }): void => {
    const found = source.indexOf(node.operator, node.left.end);
    for (const other of OTHER_OPERATORS[node.operator] ?? [])
      plant({ start: found, end: found + node.operator.length }, other);
  };
  const binary = (node: BinaryExpression | LogicalExpression): void => {
    operator(node);
    if (!TERMS.includes(node.operator) || isText(node.left) || isText(node.right)) return;
    plant(node, text(node.left));
    if (node.operator === "+" || node.operator === "*") plant(node, text(node.right));
  };
  new Visitor({
    TSLiteralType: (node) => void types.push(node),
    BinaryExpression: binary,
    LogicalExpression: binary,
    AssignmentExpression: operator,
    Literal: (node) => {
      if (typeof node.value === "number") plant(node, String(otherNumber(node.value)));
      if (typeof node.value === "boolean") plant(node, String(!node.value));
    },
    UnaryExpression: (node) => {
      if (node.operator === "!" || node.operator === "-") plant(node, `(${text(node.argument)})`);
    },
    IfStatement: (node) => {
      plant(node.test, "true");
      plant(node.test, "false");
    },
    ConditionalExpression: (node) => {
      plant(node, text(node.consequent));
      plant(node, text(node.alternate));
    },
    CallExpression: ({ callee, ...node }) => {
      if (callee.type !== "MemberExpression" || callee.computed) return;
      const name = text(callee.property);
      if (OTHER_METHODS[name] !== undefined) plant(callee.property, OTHER_METHODS[name]);
      if (LEFT_OUT.includes(name)) plant(node, text(callee.object));
    },
  }).visit(program);
  return faults.filter(({ source: planted }) => parseSync("fault.ts", planted).errors.length === 0);
}

/** A neighbour of a constant that no rounding hides: one more of a whole number, a quarter more of another. */
function otherNumber(value: number): number {
  return Number.isInteger(value) ? value + 1 : value * 1.25;
}

function isText(node: Expression | PrivateIdentifier): boolean {
  return node.type === "TemplateLiteral" || (node.type === "Literal" && typeof node.value === "string");
}
