import {
  chmodSync,
  existsSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { promisify } from "node:util";
import { brotliDecompress } from "node:zlib";
import * as say from "../../words/messages.ts";
import { usedPackage } from "../kept/used-package.ts";
import { atExit } from "../making/at-exit.ts";
import { ownName } from "../making/owner.ts";
import { removeAll } from "../making/remove.ts";
import { BrowserError } from "./browser-error.ts";
import { type ArchivedFile, filesOfTar } from "./tar.ts";
import { holds, isPrivate } from "./verified.ts";

/** The archives in the package are what an unpacked browser is compared with. */
const { folder: PACKAGE, version: PACKAGED_VERSION } = usedPackage("@sparticuz/chromium");
const PROGRAM = "chromium";

export { PACKAGED_VERSION };

/** Libraries that bare systems lack, and fonts for them, beside the packaged browser. */
export const LIBRARIES = "libraries";
export const FONTS = "fonts";

/** One folder for all projects that the program builds. */
const KEPT = resolve(import.meta.dirname, "../../../.cache/browser");

/**
 * Unpacks the packaged browser into a folder that is this user's alone, unless it is there, and gives its path. Before each
 * start every file is compared with the package, so what was cut off or put in its place is replaced.
 * @throws BrowserError where it cannot be unpacked
 */
export async function unpackBrowser(kept: string = KEPT): Promise<string> {
  try {
    const files = await archived();
    return unpackInto(kept, files) ?? unpackInto(temporary(), files) ?? fail("EPERM");
  } catch (error) {
    return error instanceof BrowserError
      ? Promise.reject(error)
      : fail((error as NodeJS.ErrnoException).code ?? `${error}`);
  }
}

function fail(fault: string): never {
  throw new BrowserError(say.printNotUnpacked({ folder: KEPT, fault }));
}

/** The path of the program below `parent`; undefined where that cannot be a folder of this user alone. */
function unpackInto(parent: string, files: readonly ArchivedFile[]): string | undefined {
  const folder = join(parent, PACKAGED_VERSION);
  try {
    mkdirSync(parent, { recursive: true, mode: 0o700 });
    if (!isPrivate(parent)) chmodSync(parent, 0o700);
    if (!isPrivate(parent)) return undefined;
    if (!holds(folder, files)) unpackAside(folder, files);
    return holds(folder, files) ? join(folder, PROGRAM) : undefined;
  } catch (error) {
    if (/^(EACCES|EPERM|EROFS|ENOTDIR|EEXIST|ENOENT)$/.test((error as NodeJS.ErrnoException).code ?? ""))
      return undefined;
    throw error;
  }
}

function unpackAside(folder: string, files: readonly ArchivedFile[]): void {
  const [beside, old] = [`${folder}-${ownName()}`, `${folder}-${ownName()}-old`];
  removeAll(beside);
  for (const { path, bytes } of files) {
    mkdirSync(dirname(join(beside, path)), { recursive: true, mode: 0o700 });
    writeFileSync(join(beside, path), bytes, { mode: 0o700, flag: "wx" });
  }
  try {
    if (lstatSync(folder, { throwIfNoEntry: false })) renameSync(folder, old);
    renameSync(beside, folder);
  } catch (error) {
    // Another process was quicker: what it unpacked is compared like any other.
    if (!existsSync(folder)) throw error;
  } finally {
    for (const left of [beside, old]) removeAll(left);
  }
}

function temporary(): string {
  const folder = mkdtempSync(join(tmpdir(), `leaflight-${ownName()}-`));
  atExit(() => removeAll(folder));
  return folder;
}

async function archived(): Promise<ArchivedFile[]> {
  const [program, drawing, fonts, libraries] = await Promise.all(
    ["chromium.br", "swiftshader.tar.br", "fonts.tar.br", "al2023.tar.br"].map((name) =>
      promisify(brotliDecompress)(readFileSync(join(PACKAGE, "bin", name))),
    ),
  );
  return [
    { path: PROGRAM, bytes: program! },
    ...filesOfTar(drawing!),
    ...filesOfTar(fonts!).filter(({ path }) => path.startsWith(`${FONTS}/`)),
    ...filesOfTar(libraries!).map(({ path, bytes }) => ({ path: path.replace(/^lib\//, `${LIBRARIES}/`), bytes })),
  ];
}
