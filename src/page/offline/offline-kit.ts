import type { Answer, KeepFailure, Question } from "../../output/offline/messages.ts";
import * as say from "../../words/messages.ts";

type Ask = (question: Question) => Promise<Answer>;

/** Keeps the kit of this page on the device and says so beside its files, with a button for everything else of it. */
export async function keepThisKit(kit: string, ask: Ask): Promise<void> {
  const place = document.querySelector(".downloads");
  if (!place) {
    await ask({ ask: "keep", kit, all: false });
    return;
  }
  const line = document.createElement("p");
  line.className = "kept";
  const state = document.createElement("span");
  state.setAttribute("role", "status");
  state.dataset.kept = "";
  const button = document.createElement("button");
  button.type = "button";
  button.textContent = say.offlineKeepAll();
  const tell = (answer: Answer): void => {
    state.textContent = stateWords(kit, answer);
    button.hidden = answer.all.includes(kit) || !answer.kits.includes(kit);
  };
  button.addEventListener("click", async () => {
    state.textContent = say.offlineKeeping();
    tell(await ask({ ask: "keep", kit, all: true }));
  });
  tell(await ask({ ask: "keep", kit, all: false }));
  line.append(state, " ", button);
  place.append(line);
}

/** Marks the kits of the catalogue that open without network. */
export function tagKept(answer: Answer): void {
  for (const card of document.querySelectorAll<HTMLElement>("[data-kit]")) {
    if (!answer.kits.includes(card.dataset.kit!)) continue;
    const tag = document.createElement("li");
    tag.className = "kept-tag";
    tag.textContent = say.offlineTag();
    card.querySelector(".tags")?.append(tag);
  }
}

function stateWords(kit: string, { kits, all, failure }: Answer): string {
  if (failure) return say.offlineNotAll({ why: whyNot(failure) });
  if (all.includes(kit)) return say.offlineKitAll();
  return kits.includes(kit) ? say.offlineKit() : "";
}

function whyNot(failure: KeepFailure): string {
  switch (failure.kind) {
    case "absent":
      return say.offlineAbsent(failure);
    case "other-version":
      return say.offlineOtherVersion(failure);
    case "no-kit":
      return say.offlineNoKit(failure);
    case "full":
      return say.offlineFull();
    case "unreachable":
      return say.offlineUnreachable();
  }
}
