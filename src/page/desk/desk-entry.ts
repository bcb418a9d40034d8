import { DESK_ROUTES, type DeskNews, type DeskState } from "../../input/desk/protocol.ts";
import { DeskRefused, DeskServer } from "./desk-server.ts";
import type { LeaveView, OpenDesk } from "./view.ts";
import { viewAt } from "./views.ts";

/** The desk's page: shows the view that its address names, and keeps to what the server tells. */
const server = new DeskServer();
const main = document.querySelector<HTMLElement>("#main")!;
const line = document.querySelector<HTMLElement>("[data-line]")!;

let state: DeskState;
let site: string | undefined;
let heard: ((news: DeskNews) => void)[] = [];
let leave: LeaveView = () => true;
let shown = location.pathname;
/** Counts what was gone to: what loads too late is not shown. */
let turn = 0;
let isAway = false;

const desk: OpenDesk = {
  server,
  state: () => state,
  site: () => site,
  listen: (one) => heard.push(one),
  go: (address) => void go(address),
  tell: (sentence) => {
    line.textContent = sentence;
  },
};

void told(async () => {
  await look();
  await show();
  server.listen(
    (news) => void told(() => hear(news)),
    (isLost) => {
      // A server that is there and does not answer was started again, and says what to do.
      if (isLost) return void told(look);
      if (isAway) desk.tell("");
      isAway = false;
      void told(() => hear({ news: "state" }));
    },
  );
});

document.addEventListener("click", (event) => {
  const link = event.target instanceof Element ? event.target.closest<HTMLAnchorElement>("a[data-way]") : null;
  if (!link || event.button !== 0 || event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return;
  event.preventDefault();
  void go(new URL(link.href).pathname);
});

addEventListener("popstate", () => {
  if (leave()) return void told(() => show());
  history.pushState(null, "", shown);
});

/** Tells what the server refused; a fault of the program goes on as one. */
async function told(work: () => Promise<void> | void): Promise<void> {
  try {
    await work();
  } catch (error) {
    if (!(error instanceof DeskRefused)) throw error;
    isAway = error.status === 0 || error.status === 403;
    desk.tell(error.message);
  }
}

async function go(address: string): Promise<void> {
  if (!leave()) return;
  history.pushState(null, "", address);
  await told(() => show());
  main.focus({ preventScroll: true });
  scrollTo(0, 0);
}

/** Shows the view of the address; where that is none, the list. */
async function show(): Promise<void> {
  heard = [];
  leave = () => true;
  shown = location.pathname;
  turn += 1;
  const own = turn;
  const { load, name } = viewAt(shown) ?? viewAt("/")!;
  const view = await load();
  if (own !== turn) return;
  // One that is left before it is filled fills a place that nobody sees.
  const place = document.createElement("div");
  main.replaceChildren(place);
  const left = await view(place, desk, name);
  if (own === turn) leave = left;
  else left();
}

async function hear(news: DeskNews): Promise<void> {
  if (news.news === "state") await look();
  if (news.news === "failure") desk.tell(news.sentence);
  for (const one of heard) one(news);
}

async function look(): Promise<void> {
  [state, site] = await Promise.all([server.get<DeskState>(DESK_ROUTES.state), server.site()]);
}
