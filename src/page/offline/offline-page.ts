import { MANIFEST } from "../../output/offline/manifest.ts";
import type { Answer, Question } from "../../output/offline/messages.ts";
import { WORKER } from "../../output/offline/site-list.ts";
import { offerAbsent, tellReason } from "./offline-absent.ts";
import { keepThisKit, tagKept } from "./offline-kit.ts";
import { OfflineNote } from "./offline-note.ts";
import { watchUpdates } from "./offline-update.ts";
import { hostText } from "./offline-words.ts";
import { kitOf, pathIn } from "./paths.ts";

/** What was told last of the site's host. */
const TOLD = "leaflight-told";

/** Makes the site installable and lets it work without network. */
export function bindOffline(site: URL): void {
  // Not in the page itself: opened from the disk, a browser reports the manifest as blocked.
  const link = document.createElement("link");
  link.rel = "manifest";
  link.href = new URL(MANIFEST, site).href;
  document.head.append(link);
  offerAbsent(site);
  if (!("serviceWorker" in navigator)) return;
  if (document.readyState === "complete") register(site);
  else addEventListener("load", () => register(site));
}

/** Once the page has all it needs itself. Where the browser refuses, the site works as any other. */
async function register(site: URL): Promise<void> {
  const note = new OfflineNote();
  // A page that no worker answers for comes from the host.
  const { controller } = navigator.serviceWorker;
  if (controller) tellHost(site, controller, note);
  try {
    const registration = await navigator.serviceWorker.register(new URL(WORKER, site), { updateViaCache: "none" });
    watchUpdates(registration, note);
    const { active } = await navigator.serviceWorker.ready;
    if (!active) return;
    const ask = (question: Question): Promise<Answer> => askWorker(active, question);
    // A seat's page names the kit that its bench and pattern belong to.
    const kit = kitOf(pathIn(site.href, location.href) ?? "") ?? document.querySelector("main")?.dataset["keeps"];
    if (kit) await keepThisKit(kit, ask);
    if (document.querySelector("[data-kit]")) tagKept(await ask({ ask: "kept" }));
  } catch {
    // No room, a private window, or a host without the worker: nothing is kept.
  }
}

/** Says where the page comes from if its host is not there, or is another's. */
async function tellHost(site: URL, worker: ServiceWorker, note: OfflineNote): Promise<void> {
  const answer = await askWorker(worker, { ask: "host" });
  const kit = kitOf(pathIn(site.href, location.href) ?? "");
  const words = hostText(answer.host, kit === undefined ? undefined : answer.editions[kit]);
  if (isNews(words)) note.tell(words);
  tellReason(answer);
}

/** Of a host that does not answer a reader hears once while the window is open, for each kit. */
function isNews(words: string): boolean {
  try {
    const told = sessionStorage.getItem(TOLD) === words;
    sessionStorage.setItem(TOLD, words);
    return !told;
  } catch {
    return true;
  }
}

function askWorker(worker: ServiceWorker, question: Question): Promise<Answer> {
  const { port1, port2 } = new MessageChannel();
  return new Promise((resolve) => {
    port1.onmessage = (event: MessageEvent<Answer>) => resolve(event.data);
    worker.postMessage(question, [port2]);
  });
}
