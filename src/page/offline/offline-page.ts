import { MANIFEST } from "../../output/offline/manifest.ts";
import type { Answer, Question } from "../../output/offline/messages.ts";
import { WORKER } from "../../output/offline/site-list.ts";
import { keepThisKit, tagKept } from "./offline-kit.ts";
import { watchUpdates } from "./offline-update.ts";
import { askedPage, kitOf, pathIn } from "./paths.ts";

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
  try {
    const registration = await navigator.serviceWorker.register(new URL(WORKER, site), { updateViaCache: "none" });
    watchUpdates(registration);
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

function askWorker(worker: ServiceWorker, question: Question): Promise<Answer> {
  const { port1, port2 } = new MessageChannel();
  return new Promise((resolve) => {
    port1.onmessage = (event: MessageEvent<Answer>) => resolve(event.data);
    worker.postMessage(question, [port2]);
  });
}

/** On the page that stands for one that is not on this device: the way to it, taken as soon as there is network again. */
function offerAbsent(site: URL): void {
  const again = document.querySelector<HTMLAnchorElement>("[data-absent-again]");
  const page = askedPage(location.search);
  if (!again || !page) return;
  again.href = new URL(page, site).href;
  again.hidden = false;
  addEventListener("online", () => location.replace(again.href));
}
