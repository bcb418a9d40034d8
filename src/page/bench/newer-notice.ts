import { leafWords } from "../../words/bench.ts";
import * as say from "../../words/messages.ts";
import { button, make } from "../shared/dom.ts";
import type { OtherMarks } from "./newer-kit.ts";
import type { OpenedPiece } from "./open-piece.ts";

/** What a kit's newer version means for the piece on the bench, and the choice where there is one. */
export function newerNotice({ newer, desk, piece }: OpenedPiece): HTMLElement[] {
  if (!newer) return [];
  if (newer.kind === "other-marks") return [choice(newer, { desk, piece })];
  const told = { same: say.pieceNewerSame, misfit: say.pieceNewerMisfit, declined: say.pieceOldPattern }[newer.kind];
  return [make("p", "notice", told())];
}

function choice(newer: OtherMarks, { desk, piece }: Pick<OpenedPiece, "desk" | "piece">): HTMLElement {
  const { leaves, done, depths } = newer.change;
  const told = [
    ...(leaves.length > 0
      ? [say.pieceNewerMarks({ count: leaves.length, leaf: leafWords(desk.plan, leaves[0]!) })]
      : []),
    ...(depths ? [say.pieceNewerDepths()] : []),
    ...(leaves.length > 0 ? [say.pieceNewerDone({ count: done.length })] : []),
  ];
  const notice = make("p", "notice newer-kit", told.join(" "));
  const stay = button(say.pieceStay(), "quiet", async () => {
    await piece.decline(newer.edition);
    notice.replaceWith(make("p", "notice", say.pieceOldPattern()));
  });
  const change = button(say.pieceChangeOver(), "quiet", async () => {
    if (!window.confirm(say.pieceChangeOverSure({ count: done.length }))) return;
    await piece.changeOver(newer);
    location.reload();
  });
  notice.append(" ", stay, " ", change);
  return notice;
}
