import type { Page } from "puppeteer";
import { MM_PER_INCH } from "../../core/units/length.ts";
import { SHEET } from "../../output/drawing/sheets/true-scale.ts";
import type { FoundBrowser } from "../browser/find-browser.ts";
import { BOUNDS, type Bounds, type StartedBrowser, startBrowser } from "../browser/start-browser.ts";
import { Wall } from "./wall.ts";

const CSS_PIXELS_PER_MM = 96 / MM_PER_INCH;

/** What a press works with. */
export interface PressSettings {
  readonly found: FoundBrowser;
  /** The built site. */
  readonly output: string;
  /** Told to a person who waits. */
  readonly note: (line: string) => void;
  readonly bounds?: Bounds;
}

/** A browser with a page behind the wall. */
export interface Press {
  readonly started: StartedBrowser;
  readonly page: Page;
  readonly wall: Wall;
}

/** @throws BrowserError where the browser does not start */
export async function startPress({ found, output, note, bounds = BOUNDS }: PressSettings): Promise<Press> {
  const started = await startBrowser(found, note, bounds);
  try {
    return await started.guard(
      (async () => {
        const page = await started.browser.newPage();
        page.setDefaultTimeout(bounds.answer);
        await page.setViewport({
          width: Math.ceil(SHEET.width * CSS_PIXELS_PER_MM),
          height: Math.ceil(SHEET.height * CSS_PIXELS_PER_MM),
        });
        const wall = await Wall.around(page, output);
        await page.emulateMediaType("print");
        return { started, page, wall };
      })(),
    );
  } catch (error) {
    await started.close();
    throw error;
  }
}
