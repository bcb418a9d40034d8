import { findBrowser } from "../../src/build/browser/find-browser.ts";
import { fakeBrowsers } from "../build/browser/fake-browser.ts";
import { makeProject } from "../site/project.ts";
import type { Bench } from "./trial.ts";
import { hold } from "./trial.ts";
import { holdNothingLeft, holdRefused, type TwoStates, twoStates } from "./two-states.ts";

/** Programs in a browser's place, with what is told of each. `$REAL` is the browser itself. */
const PROGRAMS: readonly (readonly [name: string, lines: string, told: RegExp])[] = [
  ["ends at once", "exit 1", /did not start \(code 1/],
  ["prints something else", "echo nonsense >&4; sleep 600", /did not start/],
  ["never starts", "sleep 600", /did not start within/],
  ["is stopped at once", "kill -STOP $$", /did not start within/],
  ["ends while it prints", '"$REAL" "$@" & sleep 3; kill -9 $!; exit 9', /ended while it printed|did not start/],
  [
    "stops while it prints",
    '"$REAL" "$@" & sleep 3; kill -STOP $!; wait',
    /did not answer within|did not start within/,
  ],
];

/** Builds with each of them at once, as several only wait. */
export async function breakBrowsers(bench: Bench): Promise<void> {
  const { path } = await findBrowser();
  const fakes = fakeBrowsers();
  const each = PROGRAMS.map(async ([name, lines, words]) => {
    const states = await twoStates(makeProject({ kits: ["little-gull"] }));
    states.forget();
    const program = fakes.script(name.replaceAll(" ", "-"), `REAL='${path}'\n${lines}`);
    const began = performance.now();
    const end = await states.build("new", { LEAFLIGHT_BROWSER: program });
    // A browser that ends is replaced for each page once, so a build may come through.
    if (end.code !== 0) holdRefused(end, states, words);
    else hold(states.state() === "new" && name === "ends while it prints", `built with a browser that ${name}`);
    hold(end.told.includes(program), `does not name the browser:\n${end.told}`);
    holdNothingLeft(states.project);
    bench.say(
      `a browser that ${name}: ended with ${end.code} after ${Math.round((performance.now() - began) / 1000)} s`,
    );
    states.project.remove();
  });
  await Promise.all(each);
  fakes.remove();
}

/** A browser that ends once is replaced, and the site is the same. */
export async function loseBrowser(bench: Bench, states: TwoStates): Promise<void> {
  const { path } = await findBrowser();
  const fakes = fakeBrowsers();
  const lines = `REAL='${path}'
case "$*" in *--version*) exec "$REAL" --version;; esac
[ -e '${fakes.folder}/once' ] && exec "$REAL" "$@"
touch '${fakes.folder}/once'; "$REAL" "$@" & sleep 4; kill -9 $!; exit 9`;
  states.forget();
  const { code, told } = await states.build("old", { LEAFLIGHT_BROWSER: fakes.script("once", lines) });
  hold(code === 0 || /did not start/.test(told), `a browser lost once: ended with ${code}\n${told}`);
  hold(states.state() === "old", `a browser lost once: dist is ${states.state()}`);
  bench.say(`a browser that ends once while it prints: the build ends with ${code}`);
  fakes.remove();
}
