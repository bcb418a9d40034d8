import { spawnSync } from "node:child_process";
import { chmodSync, chownSync, mkdtempSync, rmSync, statfsSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { makeProject, type Project } from "../site/project.ts";
import { type Bench, hold } from "./trial.ts";
import { holdNothingLeft, holdRefused, type TwoStates, twoStates } from "./two-states.ts";

const ROOT = process.getuid?.() === 0;
const MB = 1_000_000;

/** Fills a small file system to random degrees under a build that prints. */
export async function fillDisk(count: number, bench: Bench): Promise<void> {
  const disk = mountSmall(40);
  if (disk === undefined) return bench.say("full disk: left out, as only root mounts a small file system");
  try {
    const states = await twoStates(makeProject({ kits: ["little-gull"], parent: disk }));
    const filler = join(disk, "filler");
    let full = 0;
    for (let i = 0; i < count && bench.goesOn(); i += 1) {
      if (i % 2 === 0) states.forget();
      const { bavail, bsize } = statfsSync(disk);
      const room = Math.round(bench.random() * 8 * MB);
      writeFileSync(filler, Buffer.alloc(Math.max(0, bavail * bsize - room)));
      const end = await states.build("new");
      if (end.code === 0) {
        hold(states.state() === "new", `with ${room} bytes of room dist is ${states.state()}\n${end.told}`);
      } else {
        full += 1;
        holdRefused(end, states, /the disk is full/);
      }
      rmSync(filler);
      holdNothingLeft(states.project);
      if (states.state() !== "old") await states.build("old");
    }
    bench.say(`${full} of ${count} builds stopped by a full disk`);
  } finally {
    spawnSync("umount", ["-l", disk]);
    rmSync(disk, { recursive: true, force: true });
  }
}

/** A file system of so many MB; undefined where none can be mounted. */
function mountSmall(size: number): string | undefined {
  const folder = mkdtempSync(join(tmpdir(), "leaflight-disk-"));
  const mounted = ROOT && spawnSync("mount", ["-t", "tmpfs", "-o", `size=${size}m`, "tmpfs", folder]).status === 0;
  if (mounted) return folder;
  rmSync(folder, { recursive: true });
  return undefined;
}

/** Files that cannot be removed, folders that cannot be written. */
export async function lockFiles(bench: Bench): Promise<void> {
  const states = await twoStates();
  const { folder } = states.project;
  if (immutable(join(folder, "dist/index.html"), true)) {
    const { code, told } = await states.build("new");
    hold(code === 0 && states.state() === "new", `a locked file in dist: ${code}, dist is ${states.state()}\n${told}`);
    hold(/cannot be removed/.test(told), `a locked file in dist is not told of:\n${told}`);
    spawnSync("chattr", ["-R", "-i", join(folder, ".cache/making")]);
    await states.nextStart();
    await states.build("old");
    immutable(join(folder, "dist"), true);
    const locked = await states.build("new");
    immutable(join(folder, "dist"), false);
    holdRefused(locked, states, /dist cannot be replaced/);
    bench.say("a locked file in dist, and dist locked");
  } else bench.say("locked files: left out, as this file system or user has no chattr +i");
  await asUnprivileged(states, bench);
  states.project.remove();
}

function immutable(path: string, on: boolean): boolean {
  return process.platform === "linux" && spawnSync("chattr", [on ? "+i" : "-i", path]).status === 0;
}

/** A user who may not write where the site stands. */
async function asUnprivileged(states: TwoStates, bench: Bench): Promise<void> {
  if (!ROOT) return bench.say("a folder of another user: left out, as only root makes one");
  const nobody = 65_534;
  chmodSync(states.project.folder, 0o755);
  holdRefused(await states.build("new", { HOME: tmpdir() }, nobody), states, /permission is missing/);
  hand(states.project, nobody);
  const { code, told } = await states.build("new", { HOME: tmpdir() }, nobody);
  hold(code === 0, `as another user it ended with ${code}\n${told}`);
  bench.say(`as another user: ${/without its sandbox/.test(told) ? "without" : "with"} the browser's sandbox`);
}

function hand({ folder }: Project, user: number): void {
  for (const path of ["", ".cache", "content"]) chownSync(join(folder, path), user, user);
  spawnSync("chown", ["-R", `${user}`, join(folder, ".cache"), join(folder, "dist")]);
}
