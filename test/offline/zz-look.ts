import { findBrowser, launchBrowser } from "../../src/print/browser.ts";
import { serve } from "./serve.ts";

const host = await serve(() => "/tmp/lf/dist");
const b = await launchBrowser(await findBrowser());
const page = await b.newPage();
page.on("console", (m) => console.log("console", m.text()));
page.on("pageerror", (e) => console.log("pageerror", e));
page.on("requestfailed", (r) => console.log("failed", r.url()));
for (const dark of [false, true])
  for (const [w, q, name] of [
    [1280, "", "plain"],
    [390, "", "plain"],
    [1280, "?height=198&width=129&thick=20&leaves=150", "book"],
    [390, "?height=150&width=90&leaves=150&hours=9", "unfit"],
    [1280, "?height=150&width=60&thick=12&leaves=90", "unfit"],
    [390, "?levels=9", "empty"],
    [320, "?height=198&width=60", "slim"],
  ] as const) {
    if (dark && name !== "unfit") continue;
    await page.setViewport({ width: w, height: 900 });
    await page.emulateMediaFeatures([{ name: "prefers-color-scheme", value: dark ? "dark" : "light" }]);
    await page.goto(host.site + "index.html" + q);
    await new Promise((r) => setTimeout(r, 2500));
    await page.screenshot({ path: `/tmp/shots/${name}-${w}${dark ? "-dark" : ""}.png`, fullPage: true });
    console.log(
      name,
      w,
      await page.evaluate(() => [
        document.querySelector("[data-finder-result]")!.textContent,
        document.documentElement.scrollWidth,
        [...document.querySelectorAll(".card h3 a")].map((a) => a.getAttribute("href")),
      ]),
    );
  }
await b.close();
await host.stop();
