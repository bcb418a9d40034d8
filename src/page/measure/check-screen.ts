import { type Counted, type PageCheck, pageChecks, pageFound } from "../../core/book/page-check.ts";
import { BOUNDS } from "../../core/kit/bounds.ts";
import { checkStep } from "../../output/drawing/diagrams/measure-step.ts";
import * as say from "../../words/messages.ts";
import type { MeasureForm } from "./measure-form.ts";

/** The screen that compares two leaves with the pages that they should carry, and takes what they carry instead. */
export class CheckScreen {
  #form: MeasureForm;
  #done: () => void;
  #counted: Counted | undefined;
  /** The leaves that are still to be looked at. */
  #checks: readonly PageCheck[] = [];
  #isNear = true;

  constructor(form: MeasureForm, done: () => void) {
    this.#form = form;
    this.#done = done;
    form.part("yes").addEventListener("click", () => this.#pass());
    form.part("no").addEventListener("click", () => this.#ask());
  }

  /** Begins with pages that were counted; false where there is nothing to compare. */
  begin(counted: Counted): boolean {
    this.#counted = counted;
    this.#checks = pageChecks(counted);
    this.#isNear = true;
    if (this.#checks.length === 0) return false;
    this.#show();
    this.#form.tell("");
    return true;
  }

  /** Goes on from what she wrote instead. */
  next(): void {
    if (this.#form.part("plates").hidden) this.#readPage();
    else if (this.#form.take("plates")) this.#done();
    else this.#form.input("plates").focus();
  }

  #readPage(): void {
    const [check] = this.#checks;
    const page = this.#form.count("page", BOUNDS.page.least, BOUNDS.page.most);
    if (check && page !== undefined && this.#counted) this.#follow(this.#counted, check, page);
    else this.#form.input("page").focus();
  }

  #follow(counted: Counted, check: PageCheck, page: number): void {
    const found = pageFound(counted, check, page, this.#isNear);
    switch (found.kind) {
      case "back":
        this.#form.tell(say.measureCheckBack({ leaf: check.leaf }));
        break;
      case "impossible":
        this.#form.tell(say.measureCheckImpossible());
        break;
      case "page-one":
        this.#counted = { ...counted, pageOneLeaf: found.pageOneLeaf };
        this.#form.input("pageOneLeaf").value = String(found.pageOneLeaf);
        this.#form.take("pageOneLeaf");
        this.#checks = [check, ...pageChecks(this.#counted).slice(1)];
        this.#pass();
        this.#form.tell(say.measureCheckPageOne({ leaf: found.pageOneLeaf }));
        break;
      case "unnumbered":
        this.#form.tell(say.measureCheckUnnumbered({ leaves: found.leaves }));
        this.#form.part("plates").hidden = false;
        this.#form.input("plates").focus();
    }
  }

  #pass(): void {
    this.#checks = this.#checks.slice(1);
    this.#isNear = false;
    this.#form.tell("");
    if (this.#checks.length === 0) {
      this.#done();
      return;
    }
    this.#show();
    this.#form.part("yes").focus();
  }

  #show(): void {
    const [check] = this.#checks;
    if (!check) return;
    this.#form.part("figure").innerHTML = checkStep(check).svg;
    this.#form.part("question").textContent = say.measureCheckLead({ leaf: check.leaf, page: check.page });
    this.#form.input("page").value = "";
    this.#form.input("page").labels![0]!.textContent = say.measureCheckPage({ leaf: check.leaf });
    for (const name of ["other", "plates"]) this.#form.part(name).hidden = true;
    this.#form.part("next").hidden = true;
  }

  #ask(): void {
    this.#form.part("other").hidden = false;
    this.#form.part("next").hidden = false;
    this.#form.input("page").focus();
  }
}
