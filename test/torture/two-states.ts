import { type ChildProcess, spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { join, relative } from "node:path";
import { processesWith } from "../build/browser/processes.ts";
import { commandWords } from "../site/command.ts";
import { makeProject, PACKETS, type Project } from "../site/project.ts";
import { hold } from "./trial.ts";

/** Addresses that a site is built for in turn: each leaves its mark in most pages. */
export const ADDRESSES = { old: "https://old.example.org/", new: "https://new.example.org/" } as const;

export type State = keyof typeof ADDRESSES;

/** How a run of the build ended. */
export interface RunEnd {
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly told: string;
}

export interface Running {
  readonly child: ChildProcess;
  readonly ended: Promise<RunEnd>;
}

/** A small project whose site has two states, each known by the hashes of all its files. */
export interface TwoStates {
  readonly project: Project;
  /** Starts the build of a state, with these variables besides. */
  readonly start: (state: State, variables?: Readonly<Record<string, string>>, user?: number) => Running;
  /** Builds a state to its end. */
  readonly build: (state: State, variables?: Readonly<Record<string, string>>, user?: number) => Promise<RunEnd>;
  /** Which state dist is in; `none` without dist, `partial` in any other. */
  readonly state: () => State | "none" | "partial";
  /** Forgets what was printed, so that a build prints it again. */
  readonly forget: () => void;
  /** Starts a build that stops at once for its content, and then holds that nothing of killed ones is left. */
  readonly nextStart: () => Promise<void>;
}

/** Builds both states once; dist is in the old one then. `folder` is where the project lies, in a temporary folder where none is named. */
export async function twoStates(project: Project = makeProject({ kits: ["little-gull"] })): Promise<TwoStates> {
  const dist = join(project.folder, "dist");
  // Pages that say nothing more about a build than others.
  rmSync(join(project.folder, "content/guide"), { recursive: true, force: true });
  const known = new Map<string, State>();
  const start: TwoStates["start"] = (state, variables = {}, user) =>
    startBuild(project, { LEAFLIGHT_SITE_URL: ADDRESSES[state], ...variables }, user);
  const build: TwoStates["build"] = (...args) => start(...args).ended;
  for (const state of ["new", "old"] as const) {
    const { code, told } = await build(state);
    hold(code === 0, `the project of the trials was not built:\n${told}`);
    known.set(manifest(dist), state);
  }
  return {
    project,
    start,
    build,
    state: () => (existsSync(dist) ? (known.get(manifest(dist)) ?? "partial") : "none"),
    forget: () => rmSync(join(project.folder, PACKETS), { recursive: true, force: true }),
    nextStart: async () => {
      const { code, told } = await startBuild(project, { LEAFLIGHT_SITE_URL: "no address" }).ended;
      hold(code === 1, `the next start ended with ${code}:\n${told}`);
      holdNothingLeft(project);
    },
  };
}

/** @throws Error where a workshop holds anything, or a process of the project runs */
export function holdNothingLeft({ folder }: Project): void {
  const left = readdirSync(join(folder, ".cache/making"));
  hold(left.length === 0, `left in .cache/making: ${left.join(", ")}`);
  const running = processesWith(folder);
  hold(running.length === 0, `still running: ${running.join(", ")}`);
}

/** A build that a fault stops: one message, no trace, and dist as it was. */
export function holdRefused({ code, told }: RunEnd, states: TwoStates, words: RegExp): void {
  hold(code === 1, `ended with ${code}:\n${told}`);
  hold(words.test(told), `told otherwise than ${words}:\n${told}`);
  hold(!/^\s+at .*:\d+/m.test(told), `told a trace:\n${told}`);
  hold(states.state() === "old", `dist is ${states.state()}:\n${told}`);
}

function startBuild({ folder }: Project, variables: Readonly<Record<string, string>>, user?: number): Running {
  const child = spawn(process.execPath, commandWords("src/build/build.ts"), {
    cwd: folder,
    env: { ...process.env, ...variables, LEAFLIGHT_TRIAL: folder },
    ...(user === undefined ? {} : { uid: user, gid: user }),
  });
  let told = "";
  for (const stream of [child.stdout, child.stderr]) stream.on("data", (text: Buffer) => (told += text));
  const ended = new Promise<RunEnd>((resolve) =>
    child.once("close", (code, signal) => resolve({ code, signal, told })),
  );
  return { child, ended };
}

function manifest(folder: string): string {
  const hash = createHash("sha256");
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  for (const path of files.map((entry) => join(entry.parentPath, entry.name)).sort())
    hash.update(`${relative(folder, path)}\0`).update(createHash("sha256").update(readFileSync(path)).digest());
  return hash.digest("hex");
}
