import { type Files, type HostileCase, KIT, PAGE, page, stating } from "./sound.ts";

/** Front matters that are no plain YAML, and values that no field takes. */

function told(name: string, files: Files, says: RegExp): HostileCase {
  return { name, files, expect: "told", says };
}

const title = (yaml: string): Files => page("title: First moon", `title: ${yaml}`);

const TAGS = ["!x", "!!js/function", "!!binary", "!!timestamp", "!!set", "!!omap", "!<tag:x.org,2000:y>", "!"];

const yaml: readonly HostileCase[] = [
  ...TAGS.map((tag) => told(`the tag ${tag}`, title(`${tag} moon`), /tag/)),
  told("a tag at a list", page("borderLeaves: [", "borderLeaves: !many ["), /tag !many/),
  { name: "a tag of the core schema", files: title("!!str 2026"), expect: "built" },
  { name: "a day as title", files: title("2026-10-03"), expect: "built" },
  { name: "a truth of YAML 1.1 as title", files: title("yes"), expect: "built" },
  told("a number as title", title("12"), /title: given 12/),
  told("an alias to itself", title("&a [*a]"), /alias inside the very thing/),
  told("an alias to a map around it", stating("gauge: &g { lines: [*g] }"), /alias inside the very thing/),
  told("an alias before its anchor", title("*later"), /alias without an anchor/),
  told("an alias bomb", stating(`supplies:\n${bomb()}`), /aliases beyond all use/),
  told(
    "a thousand aliases",
    stating(`prices: { card: &p 1 }\nlinks: [${"*p,".repeat(1000)}]`),
    /aliases beyond all use/,
  ),
  told("lists within lists", stating(`links: ${"[".repeat(5000)}${"]".repeat(5000)}`), /within each other/),
  told("maps within maps", stating(`links: ${"{a: ".repeat(5000)}`), /within each other/),
  told("dashes within dashes", stating(`links:\n  ${"- ".repeat(5000)}`), /within each other/),
  told("a list that does not end", stating(`links: [${"a,".repeat(60_000)}`), /more than 100,000|flow/i),
  told("a key twice", page("summary:", "title: Again\nsummary:"), /a second key "title"/),
  told("a merge key", stating("gauge:\n  <<: { lines: [14, 22, 32] }"), /unknown key "<<"/),
  told("a key that is a list", stating("? [a, b]\n: 1"), /keys must be strings|key/i),
  told("a key called __proto__", stating("__proto__: { polluted: 1 }"), /unknown key "__proto__"/),
  told("a key called constructor", stating("constructor: 1"), /unknown key "constructor"/),
  told(
    "thousands of unknown keys",
    stating(Array.from({ length: 3000 }, (_, i) => `key${i}: 1`).join("\n")),
    /unknown key "key0"/,
  ),
  told("a key of 100,000 letters", stating(`${"k".repeat(100_000)}: 1`), /unknown key "kkk|single line|key/i),
  told(
    "a value of 100,000 letters",
    page("borderLeaves: [10, 10]", `borderLeaves: ${"9".repeat(100_000)}`),
    /fit\.borderLeaves/,
  ),
  told("a control character by its escape", title('"a\\u0007b"'), /U\+0007/),
  told("NUL by its escape", title('"a\\0b"'), /U\+0000/),
  told("an escape sequence for terminals", title('"\\e[31mred"'), /U\+001B/),
  told("half a letter", title('"\\uD83D"'), /U\+D83D/),
  told("a list as front matter", { [`${KIT}/index.md`]: "---\n- a\n---\n" }, /front matter/),
  told("a text as front matter", { [`${KIT}/index.md`]: "---\nmoon\n---\n" }, /front matter/),
  told("an empty front matter", { [`${KIT}/index.md`]: "---\n---\n" }, /front matter/),
  told("an empty page", { [`${KIT}/index.md`]: "" }, /no front matter/),
  told("a page of 1.1 MB", { [`${KIT}/index.md`]: PAGE + "moon ".repeat(220_000) }, /1\.2 MB|1\.1 MB/),
  { name: "a page of 0.9 MB", files: { [`${KIT}/index.md`]: PAGE + "moon\n".repeat(180_000) }, expect: "built" },
  told("two documents in the settings", { "content/site.yaml": "title: A\n---\ntitle: B\n" }, /second YAML document/),
  told(
    "an older YAML in the settings",
    { "content/site.yaml": "%YAML 1.1\n---\ntitle: yes\nlanguage: no\n" },
    /language/,
  ),
  told("a tag directive in the settings", { "content/site.yaml": "%TAG ! tag:x,2000:\n---\ntitle: !y A\n" }, /tag/),
  told("a language that no system knows", { "content/site.yaml": "language: en-12\n" }, /language/),
  told("settings that are a list", { "content/site.yaml": "- a\n" }, /settings/),
];

const values: readonly HostileCase[] = [
  told("one border", page("[10, 10]", "[10]"), /fit\.borderLeaves: given \[10\]/),
  told("no border", page("[10, 10]", "[]"), /fit\.borderLeaves: given \[\]/),
  ...[
    "0",
    "-1",
    "1e9",
    ".inf",
    "-.inf",
    ".nan",
    "1e400",
    '"12 parsec"',
    '"1/0 in"',
    "[12]",
    "{ a: 1 }",
    "null",
    '""',
    "true",
  ].map((value) => told(`a leaf ${value} high`, page("leafHeight: 200", `leafHeight: ${value}`), /book\.leafHeight/)),
  told(
    "a head below the leaf",
    page("height: 100", "height: 100\n  head: 600"),
    /do: lower the head, or choose a taller book/,
  ),
  told(
    "a picture that no height can show",
    page(/borderLeaves: \[10, 10\]\n {2}height: 100/, "borderLeaves: [84, 84]\n  height: 600"),
    /picture|height/,
  ),
  told(
    "a gutter wider than the leaf",
    page("height: 100", "height: 100\n  gutterClearance: 100\n  foldStyle: single"),
    /wider book|deepest/,
  ),
  told("an address that is a script", stating('links: [{ label: A, url: "javascript:alert(1)" }]'), /links\[1\]\.url/),
  told("a currency that is none", stating("currency: 12"), /currency/),
  {
    name: "a currency that no system knows",
    files: stating('currency: "shells"\nprices: { card: 2 }'),
    expect: "built",
  },
  { name: "markup as title", files: title('"<script>alert(1)</script>{{ 7 * 7 }}{% include x %}"'), expect: "built" },
];

export const FRONT_MATTERS: readonly HostileCase[] = [...yaml, ...values];

/** Ten lists, each of ten times the one before. */
function bomb(): string {
  const names = [..."abcdefghij"];
  const first = `  - &a [${"x,".repeat(10)}]`;
  const rest = names.slice(1).map((name, i) => `  - &${name} [${`*${names[i]},`.repeat(10)}]`);
  return [first, ...rest].join("\n");
}
