import * as say from "../../words/messages.ts";

/** The note in a corner of the page on the site's versions and its host. */
export class OfflineNote {
  #place = document.createElement("div");

  constructor() {
    this.#place.className = "newer";
    this.#place.setAttribute("role", "status");
    document.body.append(this.#place);
  }

  /** Words with what can be done about them; without anything else, they can be closed. Empty words tell nothing. */
  tell(words: string, ...actions: readonly (readonly [words: string, act: () => void])[]): void {
    if (words === "") return;
    const text = document.createElement("span");
    text.textContent = words;
    const close = actions.length > 0 ? say.offlineLater() : say.offlineClose();
    const buttons = [...actions, [close, () => this.#place.replaceChildren()] as const];
    this.#place.replaceChildren(text, ...buttons.flatMap(([name, act]) => [" ", button(name, act)]));
  }
}

function button(words: string, act: () => void): HTMLButtonElement {
  const made = document.createElement("button");
  made.type = "button";
  made.textContent = words;
  made.addEventListener("click", act);
  return made;
}
