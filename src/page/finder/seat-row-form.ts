import { ROW_COLUMNS, seatRow } from "../../core/class/seat-row.ts";
import { ASKED } from "../../core/finder/book-figures.ts";
import type { Refit } from "../../core/refit/refit.ts";
import * as say from "../../words/messages.ts";
import { offerFile } from "../shared/offer-file.ts";

/** Binds the form of a class's page that makes a seat's row; undefined where there is none. What it gives back takes each new book, and whether the form above is sound. */
export function bindSeatRow(): ((book: Refit, sound: boolean) => void) | undefined {
  const form = document.querySelector<HTMLFormElement>("[data-seat-row]");
  if (!form) return undefined;
  let shown: Refit | undefined;
  const [line, seat, kit] = ["line", "seat", "kit"].map((name) => form.elements.namedItem(name) as HTMLInputElement);
  const copy = form.querySelector<HTMLButtonElement>("[data-row-copy]")!;
  const save = form.querySelector<HTMLAnchorElement>("[data-row-save]")!;
  const tell = (text: string): void => {
    form.querySelector("[data-row-told]")!.textContent = text;
  };
  const write = (): void => {
    line!.value = shown ? seatRow({ seat: Number(seat!.value), kit: kit!.value }, shown) : "";
    for (const one of [copy, save]) one.hidden = shown === undefined;
    tell(shown ? "" : say.classRowMissing());
  };
  form.addEventListener("input", write);
  form.addEventListener("submit", (event) => event.preventDefault());
  copy.addEventListener("click", async () => {
    line!.select();
    tell((await copied(line!.value)) ? say.classRowCopied() : say.classRowSelected());
  });
  save.addEventListener("click", () => {
    offerFile(save, `${ROW_COLUMNS.join(",")}\n${line!.value}\n`, `seat-${seat!.value}.csv`);
  });
  form.hidden = false;
  return (book, sound) => {
    shown = sound && ASKED.every((key) => book[key] !== undefined) ? book : undefined;
    write();
  };
}

/** Some browsers, and pages from the disk, do not let a page copy. */
async function copied(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
