import { html as escaping, raw as unescaped } from "hono/html";

/** Markup that is safe to put into a page: made by `html` or `raw`. */
export type Html = { readonly isEscaped: true; toString(): string };

/** What may stand in markup: text and numbers are escaped, markup is not, lists are joined, and nothing is written for false and undefined. */
export type Markup = string | number | false | undefined | Html | readonly Markup[];

/** Markup as a tagged template; everything in it is escaped but markup. Nothing in it may be a promise, so it is there at once. */
export const html = escaping as unknown as (strings: TemplateStringsArray, ...values: readonly Markup[]) => Html;

/** Text that is markup already: our own drawings, and Markdown that was rendered. */
export const raw = unescaped as unknown as (text: string) => Html;

/** No-one types these; they stand around an argument's name while a message is filled. */
const OPEN = "\u0001";
const CLOSE = "\u0002";

/** A message some of whose arguments are markup: its own text is escaped. */
export function rich<A extends Readonly<Record<string, unknown>>>(
  message: (args: A) => string,
  args: { readonly [K in keyof A]: A[K] | Html },
): Html {
  const plain = Object.fromEntries(
    Object.entries(args).map(([name, value]) => [name, isHtml(value) ? `${OPEN}${name}${CLOSE}` : value]),
  ) as A;
  const pieces = message(plain).split(new RegExp(`${OPEN}([^${CLOSE}]*)${CLOSE}`));
  return html`${pieces.map((piece, i) => (i % 2 === 0 ? piece : (args[piece] as Html)))}`;
}

function isHtml(value: unknown): value is Html {
  return typeof value === "object" && value !== null && "isEscaped" in value;
}
