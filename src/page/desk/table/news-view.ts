import type { DeskMessage } from "../../../input/desk/protocol.ts";
import { brokenNews, cornerNews, type ForeignNews, foreignNews } from "../../../output/parts/desk/news.ts";

/** What is told above the table: a text that cannot be read, and a file that was changed outside the desk. */
export interface TableNews {
  readonly broken: readonly DeskMessage[];
  readonly foreign: ForeignNews | undefined;
  /** The file of a kit that is folded by corners. */
  readonly corner?: string | undefined;
}

/** What the maker answers. */
export interface NewsHands {
  readonly open: (message: Pick<DeskMessage, "file" | "line" | "column">) => void;
  readonly keep: () => void;
  readonly take: () => void;
  readonly merge: () => void;
}

export class NewsView {
  readonly #place: HTMLElement;
  #news: TableNews = { broken: [], foreign: undefined };
  #markup = "";

  constructor(place: HTMLElement, hands: NewsHands) {
    this.#place = place;
    place.addEventListener("click", ({ target }) => {
      const button = (target as HTMLElement).closest<HTMLButtonElement>("[data-news-do]");
      if (!button) return;
      const { newsDo, message } = button.dataset;
      if (newsDo === "open") hands.open(this.#news.broken[Number(message)]!);
      else if (newsDo === "file") hands.open({ file: this.#news.corner!, line: undefined, column: undefined });
      else hands[newsDo as "keep" | "take" | "merge"]();
    });
  }

  show(news: TableNews): void {
    this.#news = news;
    const broken = news.broken.length > 0 ? String(brokenNews(news.broken)) : "";
    const corner = news.corner === undefined ? "" : String(cornerNews(news.corner));
    const markup = (news.foreign ? String(foreignNews(news.foreign)) : "") + corner + broken;
    if (markup === this.#markup) return;
    this.#markup = markup;
    this.#place.innerHTML = markup;
  }
}
