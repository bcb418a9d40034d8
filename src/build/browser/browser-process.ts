import { type ChildProcess, spawn } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import type { Readable, Writable } from "node:stream";
import * as say from "../../words/messages.ts";
import { atExit } from "../making/at-exit.ts";
import { ownName } from "../making/owner.ts";
import { removeAll } from "../making/remove.ts";
import { OWNER_MARK } from "./browser-leftovers.ts";
import { FONTS, LIBRARIES } from "./packaged.ts";
import { Pipe } from "./pipe.ts";
import { endGroup } from "./process-group.ts";

/** What a browser has to be given on this system. */
export interface Needs {
  readonly sandbox: boolean;
  /** Libraries of its package, in place of the system's. */
  readonly libraries: boolean;
}

/** What a piece of work fails with. */
interface Failures {
  readonly late: () => Error;
  readonly ended: (how: string) => Error;
}

/** Of what the browser says, so much is kept at the end; characters. */
const KEPT = 4000;

/** A browser's process in a group of its own, with a private folder for all that it writes; both go when it or this process ends. */
export class BrowserProcess {
  readonly pipe: Pipe;
  /** The end of what it said on its error output. */
  said = "";
  readonly #folder = mkdtempSync(join(tmpdir(), `leaflight-${ownName()}-`));
  readonly #child: ChildProcess;
  readonly #ended: Promise<string>;
  readonly #forget: () => void;

  constructor(path: string, args: (profile: string) => string[], { libraries }: Needs) {
    const profile = join(this.#folder, "profile");
    mkdirSync(profile);
    this.#child = spawn(path, args(profile), {
      detached: process.platform !== "win32",
      stdio: ["ignore", "ignore", "pipe", "pipe", "pipe"],
      env: { ...process.env, ...this.#environment(libraries ? dirname(path) : undefined), [OWNER_MARK]: ownName() },
    });
    this.#forget = atExit(() => this.#clear());
    this.#ended = this.#whenEnded();
    const [, , , to, from] = this.#child.stdio as unknown as [null, null, Readable, Writable, Readable];
    this.pipe = new Pipe(to, from, () => {
      this.said += `\n${say.printBrowserStrange()}`;
      endGroup(this.#child);
    });
  }

  /** The answer of a piece of work, unless the browser ends or the time is over first. */
  async guard<T>(work: Promise<T>, time: number, { late, ended }: Failures): Promise<T> {
    let bound: NodeJS.Timeout | undefined;
    // What is not waited for any longer fails unheard when the pipe closes.
    work.catch(() => undefined);
    try {
      return await Promise.race([
        work.catch((error: unknown) => this.#sooner(error, ended)),
        this.#ended.then((how) => Promise.reject(ended(how))),
        new Promise<never>((_, reject) => {
          bound = setTimeout(() => reject(late()), time);
        }),
      ]);
    } finally {
      clearTimeout(bound);
    }
  }

  /** Ends the browser and all that it started, and clears its folder. */
  async end(): Promise<void> {
    this.#clear();
    await this.#ended;
    removeAll(this.#folder);
    this.#forget();
  }

  #clear(): void {
    endGroup(this.#child);
    this.pipe.close();
    removeAll(this.#folder);
  }

  /** An ended browser closes its pipe a moment before it is known to have ended: that is the reason to tell. */
  async #sooner(error: unknown, ended: (how: string) => Error): Promise<never> {
    const moment = new Promise<undefined>((resolve) => setTimeout(resolve, 500, undefined));
    const how = await Promise.race([this.#ended, moment]);
    throw how === undefined ? error : ended(how);
  }

  #whenEnded(): Promise<string> {
    return new Promise((resolve) => {
      this.#child.stderr?.on("data", (text: Buffer) => {
        this.said = (this.said + text.toString()).slice(-KEPT);
      });
      this.#child.once("error", (error: NodeJS.ErrnoException) => resolve(error.code ?? error.message));
      this.#child.once("exit", (code, signal) =>
        // What it said last may still be on its way.
        setTimeout(() => resolve([signal ?? `code ${code}`, this.#lastLine()].filter(Boolean).join(": ")), 100),
      );
    });
  }

  #lastLine(): string {
    const lines = this.said.split("\n").map((line) => line.replaceAll(/\p{Cc}/gu, "").trim());
    return (lines.filter(Boolean).at(-1) ?? "").slice(0, 200);
  }

  #environment(packaged: string | undefined): Readonly<Record<string, string>> {
    // A socket's path may have 107 characters; the browser's own names take 46 of them.
    const own = process.platform === "linux" && this.#folder.length < 60 ? { TMPDIR: this.#folder } : {};
    if (packaged === undefined) return own;
    const fonts = join(this.#folder, "fonts.conf");
    const folder = join(packaged, FONTS);
    writeFileSync(fonts, `<fontconfig><dir>${folder}</dir><cachedir>${this.#folder}/fonts</cachedir></fontconfig>`);
    const libraries = { ...own, LD_LIBRARY_PATH: join(packaged, LIBRARIES) };
    return existsSync("/etc/fonts/fonts.conf") ? libraries : { ...libraries, FONTCONFIG_FILE: fonts };
  }
}
