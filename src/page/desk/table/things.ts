import { type LeafNumber, leafNumber } from "../../../core/book/leaf-number.ts";
import type { Difference } from "../../../core/makeability/differences.ts";
import { pictureLeaves } from "../../../core/pattern/pattern.ts";
import type { DeskShape } from "../../../input/desk/protocol.ts";
import { bookFields } from "./book-fields.ts";
import { depthFields } from "./depth-edit.ts";
import { doorAround, motifAround } from "./door-buttons.ts";
import { doorFields, motifFields } from "./door-fields.ts";
import { DoorView } from "./door-view.ts";
import { FieldsView } from "./fields-view.ts";
import { GaugeView } from "./gauge-view.ts";
import { lampAround } from "./lamp-buttons.ts";
import { lampFields } from "./lamp-fields.ts";
import { LeafView } from "./leaf-view.ts";
import { MarksView } from "./marks-view.ts";
import { Mat } from "./mat.ts";
import { openingFields } from "./opening-fields.ts";
import { PieceView } from "./piece-view.ts";
import { RoundView } from "./round-view.ts";
import { ShapeView } from "./shape-view.ts";
import { type OnSheet, SheetView } from "./sheet-view.ts";
import type { AnyShown, CornerShown, Hands, Shown } from "./shown.ts";
import { type Judged, SlipView } from "./slip-view.ts";

/** All things on the table but the ribbon: each shows the kit, and changes its front matter by `hands`. */
export class Things {
  readonly #table: HTMLElement;
  readonly #mat: Mat;
  readonly #gauge: GaugeView;
  readonly #sheet: SheetView;
  readonly #leafView: LeafView;
  readonly #marks: MarksView;
  readonly #shape: ShapeView;
  readonly #piece: PieceView;
  readonly #round: RoundView;
  readonly #slip: SlipView;
  readonly #door: DoorView;
  readonly #depths: FieldsView;
  /** Those that need no sheet. */
  readonly #plain: readonly FieldsView<AnyShown>[];
  /** Those of light and window. */
  readonly #closing: readonly FieldsView[];
  readonly #motifFields: FieldsView;
  #shown: Shown | undefined;
  /** In the place of it where corners are folded. */
  #corner: CornerShown | undefined;
  #leaf: LeafNumber | undefined;
  #motif: number | undefined;

  constructor(table: HTMLElement, hands: Hands) {
    this.#table = table;
    const find = (name: string): HTMLElement => table.querySelector<HTMLElement>(`[data-${name}]`)!;
    const fields = (name: string): HTMLElement => table.querySelector<HTMLElement>(`[data-fields="${name}"]`)!;
    const turn = (leaf: LeafNumber): void => this.#turn(leaf);
    this.#mat = new Mat(find("mat"));
    this.#gauge = new GaugeView(find("gauge"), hands);
    this.#sheet = new SheetView(find("sheet"), hands, { turn, pick: (x, y) => this.#shape.pick(x, y) });
    this.#leafView = new LeafView(find("leaf"), find("leaf-told"), hands);
    this.#marks = new MarksView(find("marks"), this.#sheet, turn);
    this.#shape = new ShapeView(find("shape"), hands, (shape) => this.#sheet.pick(shape?.rings));
    this.#piece = new PieceView(find("piece"), find("lit-switch"));
    this.#round = new RoundView(find("round"), find("piece"), find("piece-view"));
    this.#slip = new SlipView(find("slip"), hands);
    this.#door = new DoorView(find("door-view"), hands, (motif) => this.#take(motif));
    this.#closing = [
      new FieldsView(fields("lamp"), lampFields, hands, lampAround),
      new FieldsView(fields("door"), doorFields, hands, doorAround),
    ];
    this.#plain = [
      new FieldsView<AnyShown>(fields("opening"), openingFields, hands),
      new FieldsView<AnyShown>(fields("book"), bookFields, hands),
    ];
    this.#depths = new FieldsView(fields("depths"), depthFields, hands);
    this.#motifFields = new FieldsView(
      fields("motif"),
      (shown) => motifFields(shown, this.#motif),
      hands,
      (shown) => motifAround(shown, this.#motif),
    );
    find("show").addEventListener("change", ({ target }) =>
      this.#sheet.lay((target as HTMLInputElement).value as OnSheet),
    );
  }

  /** Shows a kit that can be made. */
  show(shown: Shown, shapes: readonly DeskShape[]): void {
    this.#shown = shown;
    this.#corner = undefined;
    this.#table.dataset.units = shown.kit.units;
    const leaves = pictureLeaves(shown.pattern);
    const { leaf } = leaves.find((one) => one.leaf === this.#leaf) ?? leaves[Math.floor(leaves.length / 3)]!;
    this.#leaf = leafNumber(leaf);
    const motifs = shown.kit.motifs.length;
    if (this.#motif !== undefined && this.#motif >= motifs) this.#motif = motifs > 0 ? motifs - 1 : undefined;
    this.#mat.show(shown);
    this.#gauge.show(shown);
    this.#sheet.show(shown);
    this.#sheet.turn(leaf);
    this.#leafView.show(shown, leaf);
    this.#shape.show(shown, shapes);
    this.#depths.show(shown);
    for (const view of [...this.#plain, ...this.#closing]) view.show(shown);
    this.#motifFields.show(shown);
    this.#door.show(shown, this.#motif);
    this.#piece.show(shown);
    this.#round.show(shown);
  }

  /** Shows a kit whose corners are folded: its figures, and the piece. */
  showCorner(shown: CornerShown): void {
    this.#corner = shown;
    this.#table.dataset.units = shown.kit.units;
    for (const view of this.#plain) view.show(shown);
    this.#round.lay();
    this.#piece.show(shown);
  }

  /** Shows the same kit with its light and window: everything else of it is in sight already. */
  showWhole(shown: Shown): void {
    this.#shown = shown;
    this.#sheet.showWhole(shown);
    this.#leafView.show(shown, this.#leaf!);
    for (const view of this.#closing) view.show(shown);
    this.#motifFields.show(shown);
    this.#door.show(shown, this.#motif);
    this.#piece.showWhole(shown);
    this.#round.show(shown);
  }

  /** Shows where it will look different. */
  mark(differences: readonly Difference[]): void {
    if (this.#shown) this.#marks.show(this.#shown, differences);
  }

  /** Says how it comes out; of a kit that cannot be made, too. */
  judge(judged: Judged): void {
    this.#slip.show(this.#corner ?? this.#shown, judged);
  }

  /** The table is left. */
  dispose(): void {
    this.#mat.dispose();
    this.#round.dispose();
  }

  #turn(leaf: LeafNumber): void {
    if (!this.#shown) return;
    this.#leaf = leaf;
    this.#sheet.turn(leaf);
    this.#leafView.show(this.#shown, leaf);
  }

  #take(motif: number): void {
    if (!this.#shown || this.#motif === motif) return;
    this.#motif = motif;
    this.#motifFields.show(this.#shown);
    this.#door.show(this.#shown, motif);
  }
}
