import type { Answer, KeepFailure, Question } from "../../output/offline/messages.ts";
import { type FileNames, KIT_LIST, type KitList, type SiteList } from "../../output/offline/site-list.ts";
import type { AskedEvent, WorkerHost } from "./offline-host.ts";
import { KeepError, OfflineStore } from "./offline-store.ts";
import { absentAddress, addressOf, kitOf, pathIn } from "./paths.ts";

/** The site's list, put in by the bundler: another build is another worker. */
declare const SITE: SiteList;

const host = self as unknown as WorkerHost;
const site = new URL("./", host.location.href).href;
const store = new OfflineStore(site);
const lists = new Map<string, KitList>();

host.addEventListener("install", (event) => event.waitUntil(install()));
host.addEventListener("activate", (event) => event.waitUntil(activate()));
host.addEventListener("fetch", (event) => {
  const path = event.request.method === "GET" ? pathIn(site, event.request.url) : undefined;
  if (path !== undefined) event.respondWith(answer(event, path));
});
host.addEventListener("message", (event) => event.waitUntil(reply(event.data as Question, event.ports[0])));

/** Keeps the shell, and the new version of every kit that is kept. An update that is cut off is tried again later. */
async function install(): Promise<void> {
  await store.keepAll("", SITE.shell);
  const paths = await store.paths();
  const before = new Set(paths.filter((path) => path.endsWith(`/${KIT_LIST}`)).map(kitOf));
  for (const kit of Object.keys(SITE.kits).filter((slug) => before.has(slug))) {
    const packet = paths.some((path) => kitOf(path) === kit && path.endsWith(".pdf"));
    await keepKit(kit, packet).catch(orFull);
  }
}

/** A full device drops a kit rather than staying at an old version for ever. */
function orFull(error: unknown): void {
  if (!isFull(error)) throw error;
}

function isFull(error: unknown): boolean {
  return error instanceof DOMException && error.name === "QuotaExceededError";
}

async function activate(): Promise<void> {
  const kept = await Promise.all(Object.keys(SITE.kits).map((kit) => listsOf(kit)));
  await store.prune([["", SITE.shell], ["", SITE.seen], ...kept.flat()]);
  await host.clients.claim();
}

/** Kept files come first, so that a page and its scripts are of one version; everything else from the network. */
async function answer(event: AskedEvent, path: string): Promise<Response> {
  const name = await nameAt(path);
  const kept = name && (await store.find(path, name));
  if (kept) return kept;
  try {
    const response = await fetch(event.request);
    if (name && response.ok && !path.endsWith(".pdf"))
      event.waitUntil(store.keep(path, name, response.clone()).catch(() => undefined));
    return response;
  } catch (error) {
    if (event.request.mode !== "navigate") throw error;
    const isFolder = (await nameAt(`${path}/index.html`)) !== undefined;
    return Response.redirect(isFolder ? `${addressOf(site, path)}/` : absentAddress(site, path));
  }
}

async function reply(question: Question, port: MessagePort | undefined): Promise<void> {
  if (question.ask === "take over") return host.skipWaiting();
  let failure: KeepFailure | undefined;
  if (question.ask === "keep") {
    try {
      await keepKit(question.kit, question.packet);
    } catch (error) {
      failure = failureOf(error);
    }
  }
  port?.postMessage(await keptKits(failure));
}

/** Fetching throws a TypeError where the host does not answer. */
function failureOf(error: unknown): KeepFailure {
  if (error instanceof KeepError) return error.failure;
  return { kind: isFull(error) ? "full" : "unreachable" };
}

async function keepKit(kit: string, packet: boolean): Promise<void> {
  const name = nameIn(SITE.kits, kit);
  if (name === undefined) throw new KeepError({ kind: "no-kit", kit });
  const folder = `kits/${kit}/`;
  await store.keep(`${folder}${KIT_LIST}`, name);
  const list = await listText(kit);
  if (!list) return;
  await store.keepAll(folder, list.files);
  if (packet) await store.keepAll(folder, list.packet);
}

async function keptKits(failure: KeepFailure | undefined): Promise<Answer> {
  const holds = await store.holds();
  const kits: string[] = [];
  const packets: string[] = [];
  for (const kit of Object.keys(SITE.kits)) {
    const list = await listText(kit);
    if (!list || !holds(`kits/${kit}/`, list.files)) continue;
    kits.push(kit);
    if (holds(`kits/${kit}/`, list.packet)) packets.push(kit);
  }
  return { kits, packets, failure };
}

/** The name of a file's contents in this version; undefined for a kit that is not kept. */
async function nameAt(path: string): Promise<string | undefined> {
  const name = nameIn(SITE.shell, path) ?? nameIn(SITE.seen, path);
  const kit = kitOf(path);
  if (name !== undefined || kit === undefined) return name;
  const list = await listText(kit);
  const inside = path.slice(`kits/${kit}/`.length);
  return list && (nameIn(list.files, inside) ?? nameIn(list.packet, inside));
}

/** A kept kit's files with its list; nothing where it is not kept. */
async function listsOf(kit: string): Promise<(readonly [string, FileNames])[]> {
  const list = await listText(kit);
  const folder = `kits/${kit}/`;
  return list
    ? [
        [folder, { [KIT_LIST]: SITE.kits[kit]! }],
        [folder, list.files],
        [folder, list.packet],
      ]
    : [];
}

async function listText(kit: string): Promise<KitList | undefined> {
  const name = nameIn(SITE.kits, kit);
  const known = lists.get(kit);
  if (known || name === undefined) return known;
  const kept = await store.find(`kits/${kit}/${KIT_LIST}`, name);
  const list = (await kept?.json()) as KitList | undefined;
  if (list) lists.set(kit, list);
  return list;
}

function nameIn(names: FileNames, path: string): string | undefined {
  return Object.hasOwn(names, path) ? names[path] : undefined;
}
