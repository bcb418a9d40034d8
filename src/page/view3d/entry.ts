import * as say from "../../words/messages.ts";
import { LoadError, loadScript } from "../shared/load-script.ts";
import { BOOK_CHANGED, type RoundShared, type RoundSource, roundSource, shared } from "./shared.ts";

/** Tiny: it binds the page's button, and fetches the view and its data when the button is pressed. */

const OWN_ADDRESS = (document.currentScript as HTMLScriptElement).src;

const section = document.querySelector<HTMLElement>("[data-round]");
if (section) bind(section);

function bind(section: HTMLElement): void {
  const find = <T extends HTMLElement>(name: string): T => section.querySelector<T>(`[data-round-${name}]`)!;
  const button = find<HTMLButtonElement>("open");
  const status = find("status");
  const stage = find("stage");
  const template = find<HTMLTemplateElement>("template");
  let close: (() => void) | undefined;
  let busy = false;
  const openWords = button.textContent;
  button.hidden = false;

  const opened = async (): Promise<void> => {
    if (!drawsInThreeDimensions()) {
      status.textContent = say.roundNotDrawn();
      return;
    }
    status.textContent = say.roundFetching();
    try {
      const { source, show } = await fetched();
      close = show(stage, template, source);
      status.textContent = "";
    } catch (error) {
      stage.replaceChildren();
      status.textContent = error instanceof LoadError ? say.loadRound() : say.roundNotDrawn();
    }
  };
  document.addEventListener(BOOK_CHANGED, async () => {
    const [source, { show }] = [roundSource(), shared()];
    if (!close || !source || !show) return;
    if (!(await isReady(source)) || source !== roundSource() || !close) return;
    close();
    close = show(stage, template, source);
  });
  // The picture turns into the view at a touch; the button does the same for keys and for readers of the screen.
  for (const image of document.querySelectorAll(".hero-picture > img"))
    image.addEventListener("click", () => button.click());
  button.addEventListener("click", async () => {
    if (busy) return;
    if (close) {
      close();
      close = undefined;
    } else {
      busy = true;
      await opened();
      busy = false;
    }
    button.setAttribute("aria-expanded", String(close !== undefined));
    button.textContent = close ? say.roundClose() : openWords;
  });
}

async function fetched(): Promise<{ readonly source: RoundSource; readonly show: Required<RoundShared>["show"] }> {
  await Promise.all([
    roundSource() ?? loadScript(new URL("round-data.js", document.baseURI).href, "round"),
    shared().show ?? loadScript(new URL("round-view.js", OWN_ADDRESS).href, "round"),
  ]);
  const [source, { show }] = [roundSource(), shared()];
  if (!source || !show || !(await isReady(source))) throw new LoadError("round");
  return { source, show };
}

/** Whether what the view is made from can be had: a reader's book may need a script that is not there yet. */
async function isReady(source: RoundSource): Promise<boolean> {
  try {
    if ("ready" in source) await source.ready();
    return true;
  } catch (error) {
    if (error instanceof LoadError) return false;
    throw error;
  }
}

function drawsInThreeDimensions(): boolean {
  const context = document.createElement("canvas").getContext("webgl2");
  context?.getExtension("WEBGL_lose_context")?.loseContext();
  return context !== null;
}
