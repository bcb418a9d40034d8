import { readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import nunjucks from "nunjucks";
import { beforeAll, describe, expect, it } from "vitest";
import { FILLED } from "../../../src/build/bundle/page-scripts.ts";
import { RUNTIME, templateModule } from "../../../src/build/bundle/template-code.ts";
import { openLibrary } from "../../../src/build/library.ts";

const ROOT = join(import.meta.dirname, "../../..");
const LAYOUTS = join(ROOT, "layouts");
const PATHS = [...FILLED.kit, ...FILLED.packet];

type Fill = (context: Record<string, unknown>) => string;

/** The made module, run as it is but for the runtime's address. */
async function made(paths: readonly string[], read: (path: string) => string): Promise<Record<string, Fill>> {
  const runtime = pathToFileURL(join(ROOT, "src/page/kit/template-runtime.ts")).href;
  const code = templateModule(paths, read).replace(RUNTIME, runtime);
  const loaded = await import(`data:text/javascript,${encodeURIComponent(code)}`);
  return loaded.templates;
}

describe("templateModule(paths, read)", () => {
  const library = openLibrary(ROOT);
  const engine = new nunjucks.Environment(new nunjucks.FileSystemLoader(LAYOUTS), { autoescape: true });
  let templates: Record<string, Fill>;
  beforeAll(async () => {
    templates = await made(PATHS, (path) => readFileSync(join(LAYOUTS, path), "utf8"));
  });

  it.each(PATHS)("fills %s as Nunjucks does, for every demo kit", (path) => {
    for (const view of library.views) {
      const context = { slug: view.slug, view, kit: view.kit, pattern: view.pattern, prep: view.preparation };
      expect(templates[path]!({ ...context })).toBe(engine.render(path, { ...context }));
    }
  });

  it.each([
    "{{ a }}|{{ none }}|{{ none.deep.er }}|{{ zero }}|{{ a | safe }}",
    "{% for x in list %}{{ loop.index }}{{ x }}{% if not loop.last %}, {% endif %}{% else %}none{% endfor %}",
    "{% for x in empty %}{{ x }}{% else %}none{% endfor %}{{ list | join(' < ') }}{{ list[list.length - 1] }}",
    "{% set b = 'x' + a %}{{ b }}{% for x in list %}{% set b = x %}{{ b }}{% endfor %}",
    "{{ 'yes' if zero == 0 and not none else 'no' }}{% if none %}1{% elif zero or a %}2{% else %}3{% endif %}",
    "a  {%- if a %}  b  {%- endif -%}  c\\n\"'",
  ])("fills %s as Nunjucks does", async (text) => {
    const context = { a: `<b class="x">&'\\</b>`, zero: 0, list: ["<1>", 2, "3"], empty: [] };
    const [fill] = Object.values(await made(["one"], () => text));
    expect(fill!({ ...context })).toBe(engine.renderString(text, { ...context }));
  });

  it.each([
    "{{ a | upper }}",
    "{{ a() }}",
    "{% block b %}{% endblock %}",
    "{% for x in y %}{% include 'z' %}{% endfor %}",
  ])("refuses %s, which it does not know", (text) => {
    expect(() => templateModule(["one"], () => text)).toThrow();
  });
});
