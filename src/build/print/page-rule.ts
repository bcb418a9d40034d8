/** Runs in the page: another paper in place of the one before. The page rule is the last of its style sheets. */
export function changePaper(rule: string): void {
  const sheet = [...document.styleSheets].at(-1)!;
  for (let i = sheet.cssRules.length; i > 0; i -= 1) sheet.deleteRule(i - 1);
  sheet.insertRule(rule);
}
