import type { Question } from "../../output/offline/messages.ts";
import * as say from "../../words/messages.ts";

/** Offers a newer version once it is ready. It waits until the reader wants it; what she has kept or filled in is not touched. */
export function watchUpdates(registration: ServiceWorkerRegistration): void {
  const place = document.createElement("div");
  place.className = "newer";
  place.setAttribute("role", "status");
  document.body.append(place);
  const follow = (worker: ServiceWorker | null): void => {
    if (!worker) return;
    const look = (): void => {
      // Without a controller this is the first visit: nothing is newer.
      if (worker.state === "installed" && navigator.serviceWorker.controller) offer(place, worker);
    };
    worker.addEventListener("statechange", look);
    look();
  };
  registration.addEventListener("updatefound", () => follow(registration.installing));
  follow(registration.installing ?? registration.waiting);
}

function offer(place: HTMLElement, worker: ServiceWorker): void {
  const words = document.createElement("span");
  words.textContent = say.offlineNewer();
  place.replaceChildren(
    words,
    " ",
    button(say.offlineReload(), () => {
      // Another tab may have let it take over meanwhile.
      if (worker.state !== "installed") return location.reload();
      navigator.serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true });
      worker.postMessage({ ask: "take over" } satisfies Question);
    }),
    " ",
    button(say.offlineLater(), () => place.replaceChildren()),
  );
}

function button(words: string, act: () => void): HTMLButtonElement {
  const made = document.createElement("button");
  made.type = "button";
  made.textContent = words;
  made.addEventListener("click", act);
  return made;
}
