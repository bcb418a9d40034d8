import { editionOf } from "../../core/piece/edition.ts";
import type { Piece } from "../../core/piece/piece.ts";
import type { KitData } from "../shared/kit-data.ts";
import type { PieceStore } from "./piece-store.ts";

/**
 * The form of a kit's data that this program reads; it grows with every change of `Kit` that an older pattern would not
 * survive. What is kept in another form is not opened.
 */
const KIT_FORM = 1;

/** Keeps a kit as it is now, so that a piece can go on with its pattern after the kit was changed. */
export async function keepEdition({ base }: PieceStore, data: KitData): Promise<void> {
  const edition = editionOf(data.kit);
  try {
    if (!base || (await base.getKey("editions", edition)) !== undefined) return;
    const packed = await throughStream(JSON.stringify({ form: KIT_FORM, data }), "CompressionStream");
    await base.put("editions", packed, edition);
  } catch {
    // A device without room, or a browser that cannot compress: the bench then says that the kit has changed.
  }
}

/** The kit as it was; undefined where this device does not keep it. */
export async function keptEdition({ base }: PieceStore, edition: string): Promise<KitData | undefined> {
  try {
    const packed = await base?.get("editions", edition);
    if (!packed) return undefined;
    const text = new TextDecoder().decode(await throughStream(packed, "DecompressionStream"));
    const { form, data } = JSON.parse(text) as { readonly form: number; readonly data: KitData };
    return form === KIT_FORM && editionOf(data.kit) === edition ? data : undefined;
  } catch {
    return undefined;
  }
}

/** Drops the states of kits that no piece needs any longer. */
export async function dropEditions({ base }: PieceStore, pieces: readonly Piece[]): Promise<void> {
  const needed = new Set(pieces.map(({ edition }) => edition));
  const kept = (await base?.getAllKeys("editions")) ?? [];
  for (const edition of kept) if (!needed.has(edition)) await base!.delete("editions", edition);
}

function throughStream(
  content: string | ArrayBuffer,
  kind: "CompressionStream" | "DecompressionStream",
): Promise<ArrayBuffer> {
  const stream = kind === "CompressionStream" ? new CompressionStream("gzip") : new DecompressionStream("gzip");
  return new Response(new Blob([content]).stream().pipeThrough(stream)).arrayBuffer();
}
