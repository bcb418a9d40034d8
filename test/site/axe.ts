import axe from "axe-core";
import type { Page } from "puppeteer";

/** What axe finds on a page as it stands, a line for each rule with the first element that breaks it. */
export async function axeFindings(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    // From the disk no script may read a style sheet: axe would get none, and each try is told as a fault, some only on the next page.
    const preload = location.protocol !== "file:";
    const { violations } = await (globalThis as unknown as { axe: typeof axe }).axe.run(document, { preload });
    return violations.map((one) => `${one.id}: ${one.nodes[0]!.html.slice(0, 120)}`);
  });
}
