import type { Answer, Question } from "../../output/offline/messages.ts";

type Ask = (question: Question) => Promise<Answer>;

/** Keeps the kit of this page on the device and says so beside its files, with a button for the printed packet. */
export async function keepThisKit(kit: string, ask: Ask): Promise<void> {
  const place = document.querySelector(".downloads");
  if (!place) {
    await ask({ ask: "keep", kit, packet: false });
    return;
  }
  const line = document.createElement("p");
  line.className = "kept";
  const state = document.createElement("span");
  state.setAttribute("role", "status");
  state.dataset.kept = "";
  const button = document.createElement("button");
  button.type = "button";
  button.textContent = "Keep the packet on this device";
  const tell = (answer: Answer): void => {
    state.textContent = stateWords(kit, answer);
    button.hidden = answer.packets.includes(kit) || !answer.kits.includes(kit);
  };
  button.addEventListener("click", async () => {
    state.textContent = "Keeping the packet …";
    tell(await ask({ ask: "keep", kit, packet: true }));
  });
  tell(await ask({ ask: "keep", kit, packet: false }));
  line.append(state, " ", button);
  place.append(line);
}

/** Marks the kits of the catalogue that open without network. */
export function tagKept(answer: Answer): void {
  for (const card of document.querySelectorAll<HTMLElement>("[data-kit]")) {
    if (!answer.kits.includes(card.dataset.kit!)) continue;
    const tag = document.createElement("li");
    tag.className = "kept-tag";
    tag.textContent = "on this device";
    card.querySelector(".tags")?.append(tag);
  }
}

function stateWords(kit: string, { kits, packets, problem }: Answer): string {
  if (problem !== undefined) return `Not all of it could be kept on this device: ${problem}.`;
  if (packets.includes(kit)) return "On this device with its packet: works without network.";
  return kits.includes(kit) ? "On this device: works without network." : "";
}
