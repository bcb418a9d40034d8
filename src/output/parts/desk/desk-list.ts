import * as say from "../../../words/messages.ts";
import { type Html, html } from "../markup.ts";

/** How a kit or a class is; see the desk's protocol. */
export type ListedState = "fine" | "look" | "broken" | "waiting";

/** Something wrong with a file, in the parts of its message. */
export interface ListedMessage {
  readonly file: string;
  readonly line: number | undefined;
  readonly column: number | undefined;
  readonly field: string;
  readonly given: string;
  readonly allowed: string;
  readonly remedy: string;
}

/** A kit or a class as the list shows it. */
export interface Listed {
  readonly slug: string;
  readonly title: string;
  readonly file: string;
  readonly draft: boolean;
  readonly state: ListedState;
  readonly messages: readonly ListedMessage[];
  readonly warnings: readonly string[];
  readonly page: string | undefined;
  readonly authorPage: string | undefined;
  readonly cover: string | undefined;
  readonly papers: readonly string[];
}

/** How far the printing of something is. */
export interface ListedPrinting {
  readonly done: number;
  readonly of: number;
  /** Seconds. */
  readonly left?: number;
  readonly ended?: true;
  readonly failure?: string;
}

/** What is listed, and the served site's origin where it is served. */
export interface DeskList {
  readonly kits: readonly Listed[];
  readonly classes: readonly Listed[];
  readonly messages: readonly ListedMessage[];
  readonly site: string | undefined;
  readonly isBusy: boolean;
}

export type ListedKind = "kit" | "class";

/** What needs its author comes first. */
const ORDER: readonly ListedState[] = ["broken", "look", "waiting", "fine"];

const STATES: Readonly<Record<ListedState, () => string>> = {
  broken: say.deskStateBroken,
  look: say.deskStateLook,
  waiting: say.deskStateWaiting,
  fine: say.deskStateFine,
};

/** Of a file with more faults, the first are enough to begin with. */
const MOST_MESSAGES = 3;

/** From so many on, a field finds them. */
const MANY = 9;

/** The list of all that is on the desk: what is wrong with what all share, kits, classes. */
export function deskList({ kits, classes, messages, site, isBusy }: DeskList): Html {
  const isMany = kits.length + classes.length >= MANY;
  return html`<div class="shelf">
<div class="shelf-head"><h1>${say.deskListTitle()}</h1><p class="shelf-sum">${summary(kits, classes)}</p>
<p class="shelf-ways">${isMany && findField()}<a class="go" href="/new" data-way>${say.deskNewKit()}</a>${site !== undefined && html`<a href="${site}/" target="leaflight-site">${say.deskSeeSite()}</a>`}</p></div>
${messages.length > 0 && html`<section class="shelf-wrong" aria-labelledby="shelf-wrong"><h2 id="shelf-wrong">${say.deskSharedWrong()}</h2>${messageList(messages)}</section>`}
<section aria-labelledby="shelf-kits"><h2 id="shelf-kits">${say.deskKits()}</h2>${entries(kits, "kit", site, isBusy ? say.deskLooking() : say.deskNoKits())}</section>
${classes.length > 0 && html`<section aria-labelledby="shelf-classes"><h2 id="shelf-classes">${say.deskClasses()}</h2>${entries(classes, "class", site, "")}</section>`}
</div>`;
}

/** What is told of printing, below an entry. */
export function printingLine({ done, of, left, ended, failure }: ListedPrinting, entry: Listed, site: string): Html {
  if (failure !== undefined) return html`<p class="bad">${say.deskPrintFailed()}</p><pre>${failure}</pre>`;
  if (ended) return html`<p>${say.deskPrinted()}</p>${paperList(entry.papers, site)}`;
  const bar = html`<progress max="${Math.max(of, 1)}" value="${done}" aria-label="${say.deskPrinting({ title: entry.title })}"></progress>`;
  if (of === 0) return html`${bar}<p>${say.deskPrintBegins()}</p>`;
  return html`${bar}<p>${left === undefined ? say.deskPrintFar({ done, of }) : say.deskPrintFarLeft({ done, of, left })}</p>`;
}

function paperList(papers: readonly string[], site: string): Html | false {
  if (papers.length === 0) return false;
  const name = (path: string): string => path.slice(path.lastIndexOf("/") + 1);
  return html`<ul class="papers">${papers.map((path) => html`<li><a href="${site}${path}" target="_blank" rel="noopener">${name(path)}</a></li>`)}</ul>`;
}

function findField(): Html {
  return html`<label class="shelf-find">${say.deskFind()} <input type="search" data-find autocomplete="off"></label>`;
}

/** How many there are, and how many of them need their author. */
function summary(kits: readonly Listed[], classes: readonly Listed[]): string {
  const all = [...kits, ...classes];
  const count = (state: ListedState): number => all.filter((one) => one.state === state).length;
  if (count("waiting") > 0) return say.deskSumWaiting({ known: all.length - count("waiting"), all: all.length });
  return say.deskSum({ kits: kits.length, classes: classes.length, broken: count("broken"), look: count("look") });
}

function entries(all: readonly Listed[], kind: ListedKind, site: string | undefined, none: string): Html {
  if (all.length === 0) return html`<p class="shelf-none">${none}</p>`;
  const sorted = ORDER.flatMap((state) => all.filter((one) => one.state === state));
  return html`<ul class="shelf-list">${sorted.map((one) => entryItem(one, kind, site))}</ul>`;
}

function entryItem(entry: Listed, kind: ListedKind, site: string | undefined): Html {
  const { slug, title, file, draft, state, messages, warnings, page, cover, papers } = entry;
  const address = kind === "kit" ? `/kits/${slug}` : `/classes/${slug}`;
  const id = `${kind}-${slug}`;
  const isPrinted = kind === "kit" ? papers.length > 0 : state === "fine" || state === "look";
  return html`<li class="entry ${state}" data-entry="${kind} ${slug}" data-title="${title}">
${kind === "kit" && html`<a class="entry-cover" href="${address}" data-way tabindex="-1" aria-hidden="true">${bareBook()}${cover !== undefined && html`<img data-cover="${cover}" alt="">`}</a>`}
<div class="entry-text"><h3 id="${id}"><a href="${address}" data-way>${title}</a></h3>
<p class="entry-state"><span class="seal">${STATES[state]()}</span>${draft && html` <span class="draft">${say.deskDraft()}</span>`}</p>
${messages.length > 0 && messageList(messages)}
${warnings.length > 0 && warningList(warnings, state)}
<p class="entry-ways" role="group" aria-labelledby="${id}"><a class="entry-go" href="${address}" data-way>${kind === "kit" ? say.deskLayKit() : say.deskLayClass()}</a> ${site !== undefined && page !== undefined && html`<a href="${site}${page}" target="leaflight-site">${say.deskSeePage()}</a> `}<button type="button" data-open="${file}">${say.deskOpenFile()}</button>${isPrinted && html` <button type="button" data-print="${kind} ${slug}">${say.deskPrint()}</button>`}</p>
<div class="entry-printing" data-printing aria-live="polite"></div></div></li>
`;
}

/** A book that stands open, in the place of a cover that is not made yet. */
function bareBook(): Html {
  const leaves = [-42, -28, -14, 0, 14, 28, 42].map((x) => `M50 92L${50 + x} ${20 + Math.abs(x) / 6}`).join("");
  return html`<svg class="entry-bare" viewBox="0 0 100 100" aria-hidden="true"><path d="${leaves}"/></svg>`;
}

function warningList(warnings: readonly string[], state: ListedState): Html {
  const told = { count: warnings.length };
  const [kind, text] = state === "fine" ? ["noted", say.deskNoted(told)] : ["look", say.deskLookAt(told)];
  return html`<details class="entry-${kind}"><summary>${text}</summary><ul>${warnings.map((one) => html`<li>${one}</li>`)}</ul></details>`;
}

/** Messages with what is wrong, and a button each that opens the file there; more than a few are folded away. */
function messageList(messages: readonly ListedMessage[]): Html {
  const items = messages.map(messageItem);
  const more = items.slice(MOST_MESSAGES);
  return html`<ul class="wrongs">${items.slice(0, MOST_MESSAGES)}</ul>${more.length > 0 && html`<details><summary>${say.deskMoreMessages({ count: more.length })}</summary><ul class="wrongs">${more}</ul></details>`}`;
}

function messageItem({ file, line, column, field, given, allowed, remedy }: ListedMessage): Html {
  const name = file.slice(file.lastIndexOf("/") + 1);
  return html`<li><p><b>${field}</b>: ${say.deskGiven({ given })}</p><p>${say.deskAllowed({ allowed })}</p><p>${say.deskRemedy({ remedy })}</p>
<button type="button" data-open="${file}"${line !== undefined && html` data-line="${line}"`}${column !== undefined && html` data-column="${column}"`}>${line === undefined ? say.deskOpenAt({ file: name }) : say.deskOpenAtLine({ file: name, line })}</button></li>`;
}
