import type { Piece } from "../../core/piece/piece.ts";
import type { PieceBase } from "./piece-base.ts";

/** What a card shows of a piece. */
export type Glance = Pick<Piece, "id" | "kit" | "title" | "number" | "name" | "address" | "last" | "summary">;

/** The pieces of a device as cards show them; whoever opens one checks it whole. What is no piece is passed over. */
export async function glances(base: PieceBase): Promise<readonly Glance[]> {
  return (await base.getAll("pieces")).filter(isGlance);
}

function isGlance(record: object): record is Glance {
  const { id, kit, title, number, name, address, last, summary } = record as Partial<Glance>;
  const texts = [id, title, name, address, last].every((text) => typeof text === "string");
  return (
    texts &&
    typeof kit === "string" &&
    /^[a-z0-9-]+$/.test(kit) &&
    typeof number === "number" &&
    typeof summary?.done === "number" &&
    !Number.isNaN(Date.parse(last!))
  );
}
