import type { Question } from "../../output/offline/messages.ts";
import * as say from "../../words/messages.ts";
import type { OfflineNote } from "./offline-note.ts";

/** Offers a newer version once it is ready. It waits until the reader wants it; what she has kept or filled in is not touched. */
export function watchUpdates(registration: ServiceWorkerRegistration, note: OfflineNote): void {
  const { serviceWorker } = navigator;
  let controlled = serviceWorker.controller !== null;
  let reloading = false;
  const reload = (): void => {
    reloading = true;
    location.reload();
  };
  const offer = (worker: ServiceWorker): void => {
    const take = (): void => {
      // Another tab may have let it take over meanwhile.
      if (worker.state === "installed") {
        reloading = true;
        serviceWorker.addEventListener("controllerchange", reload, { once: true });
        worker.postMessage({ ask: "take over" } satisfies Question);
      } else reload();
    };
    note.tell(say.offlineNewer(), [say.offlineReload(), take]);
  };
  const follow = (worker: ServiceWorker | null): void => {
    // Without a controller this is the first visit: nothing is newer.
    if (!worker || !serviceWorker.controller) return;
    let whole = worker.state === "installed";
    const look = (): void => {
      if (worker.state === "installed") offer(worker);
      else if (worker.state === "redundant" && !whole) note.tell(say.offlineUpdateFailed());
      whole ||= worker.state === "installed";
    };
    worker.addEventListener("statechange", look);
    look();
  };
  registration.addEventListener("updatefound", () => follow(registration.installing));
  follow(registration.installing ?? registration.waiting);
  serviceWorker.addEventListener("controllerchange", () => {
    // This page is of the version before: what it would still fetch is not.
    if (controlled && !reloading) note.tell(say.offlineTakenOver(), [say.offlineReload(), reload]);
    controlled = true;
  });
}
