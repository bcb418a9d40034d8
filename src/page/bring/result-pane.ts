import type { Hurdle, Look } from "../../core/beginning/brought.ts";
import { asCutKit } from "../../core/kit/cut-kit.ts";
import type { Kit } from "../../core/kit/kit.ts";
import { fitKit } from "../../core/pattern/fit-kit.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import { frontPicture } from "../../output/drawing/front/picture.ts";
import { levelKey, mapSeen } from "../../output/parts/bring/seen.ts";
import { bringSlip, hurdlesPart } from "../../output/parts/bring/slip.ts";
import { html, raw } from "../../output/parts/markup.ts";
import { viewKit } from "../../output/views/kit-view.ts";
import { formatSize } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import { fill, partOf } from "./fill.ts";

/** Findings that are told beside the figures. */
const TOLD = 2;

/** What becomes of the picture: its levels, the folded book, the numbers, or what is in the way. */
export class ResultPane {
  readonly #table: HTMLElement;
  #shown: Look | undefined;
  #slug = "";
  /** What lies folded on the table. */
  #laid: { readonly pattern: Pattern; readonly title: string } | undefined;

  constructor(table: HTMLElement) {
    this.#table = table;
  }

  /** Shows a look; without one there is no picture. */
  show(look: Look | undefined): void {
    if (look === this.#shown) return;
    this.#shown = look;
    this.hurdles(look?.hurdles ?? []);
    this.#showMap(look);
    const kit = look?.kit && look.map && { ...look.kit, picture: look.map };
    if (kit) this.#showKit(kit, look);
    else this.#showNoKit(look === undefined);
  }

  /** The name of the kit's folder, which chooses the cloth of its boards. */
  name(slug: string): void {
    if (slug === this.#slug) return;
    this.#slug = slug;
    this.#showPiece();
  }

  /** Shows what is in the way; nothing where nothing is. */
  hurdles(hurdles: readonly Hurdle[]): void {
    const place = partOf(this.#table, "hurdles");
    place.hidden = hurdles.length === 0;
    if (hurdles.length > 0) place.innerHTML = String(hurdlesPart(hurdles));
  }

  /** A picture that cannot be drawn any more stays in sight as it was last, but pale. */
  #showMap(look: Look | undefined): void {
    const pane = partOf(this.#table, "becomes-pane");
    const place = partOf(this.#table, "map");
    if (look === undefined) pane.hidden = true;
    place.classList.toggle("stale", look !== undefined && look.map === undefined);
    if (!look?.map) return;
    const { map, levels } = look;
    pane.hidden = false;
    place.style.setProperty("--aspect", String(map.width / map.height));
    place.innerHTML = String(mapSeen(map, levels.length));
    fill(partOf(this.#table, "map-foot"), JSON.stringify(levels), () => levelKey(levels));
  }

  #showNoKit(isEmpty: boolean): void {
    const piece = partOf(this.#table, "piece");
    piece.classList.toggle("stale", !isEmpty);
    partOf(this.#table, "slip-thing").hidden = true;
    if (!isEmpty) return;
    this.#laid = undefined;
    piece.innerHTML = String(html`<p class="hint">${say.deskNewPieceNone()}</p>`);
  }

  #showPiece(): void {
    if (!this.#laid) return;
    const { pattern, title } = this.#laid;
    const picture = frontPicture(pattern, { slug: this.#slug, title, mood: "day" });
    partOf(this.#table, "piece").innerHTML = String(raw(picture));
  }

  #showKit(kit: Kit, { notes, lit }: Look): void {
    const result = fitKit(asCutKit(kit));
    if (!result.fits) return;
    const { pattern, findings } = result;
    partOf(this.#table, "piece").classList.remove("stale");
    this.#laid = { pattern, title: kit.title };
    this.#showPiece();
    const view = viewKit({ kit, pattern, findings, pictureNotes: [] }, []);
    const { levels, units } = kit;
    const figures = [
      [say.deskNewHeight(), formatSize(pattern.fit.height, units)],
      [say.deskNewOpening(), view.figures.opening],
      [say.deskNewCuts(), String(view.counts.cuts)],
      [say.deskNewTime(), view.figures.hours],
      [say.deskNewLevelsCount(), String(levels.length)],
    ] as const;
    const told = [...(lit ? [] : [say.deskNewUnlit()]), ...view.warnings.slice(0, TOLD)];
    partOf(this.#table, "slip-thing").hidden = false;
    partOf(this.#table, "slip").innerHTML = String(bringSlip(figures, told, notes));
  }
}
