import type { Kit } from "../../core/kit/kit.ts";
import { formatDepth, formatSize } from "../../words/lengths.ts";
import type { Paper } from "./paper.ts";

/** What stands at the foot of every printed page: title, the kit's version, the book it is for, the paper. */
export function packetFooter(kit: Kit, title: string, paper: Paper): string {
  const size = `${kit.book.leaves} leaves of ${formatDepth(kit.book.leafHeight, kit.units)} × ${formatSize(kit.book.leafWidth, kit.units)}`;
  const version = kit.versions[0] ? ` · version ${kit.versions[0].version}` : "";
  return `${title}${version} · ${size} · ${paper.label}`;
}
