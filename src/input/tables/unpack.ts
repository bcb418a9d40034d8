import { strFromU8, unzipSync } from "fflate";

/** What a spreadsheet's parts may have unpacked, together, in bytes: a small file can be packed from very many. */
const MOST_UNPACKED = 32_000_000;

/** The parts of a spreadsheet, by their paths in its archive; undefined where it is no archive, or holds too much. */
export function unpack(bytes: Buffer, wanted: RegExp): ReadonlyMap<string, string> | undefined {
  let total = 0;
  try {
    const parts = unzipSync(bytes, {
      filter: ({ name, originalSize }) => {
        if (!wanted.test(name)) return false;
        total += originalSize;
        if (total > MOST_UNPACKED) throw new RangeError(name);
        return true;
      },
    });
    return new Map(Object.entries(parts).map(([path, part]) => [path, strFromU8(part)]));
  } catch {
    return undefined;
  }
}
