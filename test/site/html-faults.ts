import { HtmlValidate } from "html-validate";

// html-validate, an independent checker of the HTML standard and its good use. Off: what is taste and not fault.
const validator = new HtmlValidate({
  extends: ["html-validate:recommended"],
  rules: {
    "doctype-style": "off",
    "attribute-boolean-style": "off",
    "attribute-empty-style": "off",
    // Text is the standard's default.
    "no-implicit-input-type": "off",
    // These forms answer each change as it is made and are never sent.
    "wcag/h32": "off",
  },
});

/** What an unrelated validator finds wrong in a page, with places. */
export async function htmlFaults(html: string, name: string): Promise<string[]> {
  const { results } = await validator.validateString(html, name);
  return results.flatMap(({ messages }) =>
    messages.map((one) => `${name}:${one.line}:${one.column} ${one.ruleId}: ${one.message}`),
  );
}
