import { type Paper, pageRule } from "../../output/views/paper.ts";

/** The page rule of a paper with another paper's footer at the head, in the same room. */
export function ruleOfTwo(paper: Paper, footer: string, other: string): string {
  const [page, ...boxes] = pageRule(paper, footer).split("\n");
  const [, box] = pageRule(paper, other).split("\n");
  return [page, box!.replace("@bottom-left", "@top-left"), ...boxes].join("\n");
}

/** Runs in the page: another rule in place of the one before. The page rule is the last of its style sheets. */
export function changeRule(rule: string): void {
  const sheet = [...document.styleSheets].at(-1)!;
  for (let i = sheet.cssRules.length; i > 0; i -= 1) sheet.deleteRule(i - 1);
  sheet.insertRule(rule);
}
