import type { Kit } from "../../core/kit/kit.ts";
import { formatDepth, formatSize } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import { paperLabel } from "../../words/papers.ts";
import type { Paper } from "./paper.ts";

/** What stands at the foot of every printed page: title, the kit's version, the book it is for, the paper. */
export function packetFooter(
  kit: Pick<Kit, "book" | "versions" | "units">,
  title: string,
  paper: Pick<Paper, "name">,
): string {
  const { leaves, leafHeight, leafWidth } = kit.book;
  const version = kit.versions[0] ? [say.packetFooterVersion({ version: kit.versions[0].version })] : [];
  const height = formatDepth(leafHeight, kit.units);
  const book = say.packetFooterBook({ leaves, height, width: formatSize(leafWidth, kit.units) });
  return [title, ...version, book, paperLabel(paper.name)].join(" · ");
}
