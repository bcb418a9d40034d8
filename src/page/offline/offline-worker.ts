import type { Answer, KeepFailure, Question } from "../../output/offline/messages.ts";
import { KIT_LIST, type SiteList } from "../../output/offline/site-list.ts";
import { OfflineAnswers } from "./offline-answers.ts";
import type { WorkerHost } from "./offline-host.ts";
import { OfflineKits } from "./offline-kits.ts";
import { lookAtHost } from "./offline-look.ts";
import { isFull, KeepError, OfflineStore } from "./offline-store.ts";
import { kitOf, pathIn } from "./paths.ts";

/** The site's list, put in by the bundler: another build is another worker. */
declare const SITE: SiteList;

const host = self as unknown as WorkerHost;
const site = new URL("./", host.location.href).href;
const store = new OfflineStore(site);
const kits = new OfflineKits(store, SITE);
const answers = new OfflineAnswers(site, SITE, store, kits);

host.addEventListener("install", (event) => event.waitUntil(install()));
host.addEventListener("activate", (event) => event.waitUntil(activate()));
host.addEventListener("fetch", (event) => {
  const path = event.request.method === "GET" ? pathIn(site, event.request.url) : undefined;
  if (path !== undefined) event.respondWith(answers.answer(event.request, path, (work) => event.waitUntil(work)));
});
host.addEventListener("message", (event) => event.waitUntil(reply(event.data as Question, event.ports[0])));

/**
 * Keeps the shell, and the new version of every kit that is kept, all of it or nothing: where something cannot be kept, the old
 * version stays whole, and it is tried again later.
 */
async function install(): Promise<void> {
  const added: string[] = [];
  try {
    await store.keepAll("", SITE.shell, added);
    const paths = await store.paths();
    const before = new Set(paths.filter((path) => path.endsWith(`/${KIT_LIST}`)).map(kitOf));
    for (const kit of Object.keys(SITE.kits).filter((slug) => before.has(slug))) {
      const all = paths.some((path) => kitOf(path) === kit && path.endsWith(".pdf"));
      await kits.keep(kit, all, added);
    }
  } catch (error) {
    // What is here already need not be fetched again, but a full device needs the room.
    if (isFull(error)) await store.drop(added);
    throw error;
  }
}

async function activate(): Promise<void> {
  await store.prune([["", SITE.shell], ["", SITE.seen], ...(await kits.files())]);
  await host.clients.claim();
}

async function reply(question: Question, port: MessagePort | undefined): Promise<void> {
  if (question.ask === "take over") return host.skipWaiting();
  let failure: KeepFailure | undefined;
  if (question.ask === "keep") {
    try {
      await kits.keep(question.kit, question.all);
    } catch (error) {
      failure = failureOf(error);
    }
  }
  const state = question.ask === "host" ? await lookAtHost(site, SITE.version) : undefined;
  port?.postMessage({ ...(await kits.kept()), failure, host: state } satisfies Answer);
}

/** Fetching throws a TypeError where the host does not answer. */
function failureOf(error: unknown): KeepFailure {
  if (error instanceof KeepError) return error.failure;
  return { kind: isFull(error) ? "full" : "unreachable" };
}
