import { BOOK_CHANGED, shared } from "./shared.ts";

/** Tiny: it binds the page's button, and fetches the view and its data when the button is pressed. */

const OWN_ADDRESS = (document.currentScript as HTMLScriptElement).src;
const NO_WEBGL =
  "This browser cannot draw in three dimensions (WebGL is missing or off); the front picture above shows the same book.";
const NOT_FETCHED =
  "The view could not be fetched; the front picture above shows the same book. Press again to try once more.";

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
  button.hidden = false;

  const opened = async (): Promise<void> => {
    if (!drawsInThreeDimensions()) {
      status.textContent = NO_WEBGL;
      return;
    }
    status.textContent = "Fetching the view …";
    try {
      const { data, show } = await fetched();
      close = show(stage, template, data);
      status.textContent = "";
    } catch (error) {
      stage.replaceChildren();
      status.textContent = error instanceof LoadError ? NOT_FETCHED : NO_WEBGL;
    }
  };
  document.addEventListener(BOOK_CHANGED, () => {
    const { data, show } = shared();
    if (!close || !data || !show) return;
    close();
    close = show(stage, template, data);
  });
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
    button.textContent = close ? "Close the view" : "Turn it round";
  });
}

/** Classic scripts and no fetch, because only they load from a page opened from the disk. */
async function fetched(): Promise<Required<ReturnType<typeof shared>>> {
  await Promise.all([
    shared().data ?? loadScript(new URL("round-data.js", document.baseURI).href),
    shared().show ?? loadScript(new URL("round-view.js", OWN_ADDRESS).href),
  ]);
  const { data, show } = shared();
  if (!data || !show) throw new LoadError();
  return { data, show };
}

function loadScript(address: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = address;
    script.onload = () => resolve();
    script.onerror = () => {
      script.remove();
      reject(new LoadError());
    };
    document.head.append(script);
  });
}

class LoadError extends Error {}

function drawsInThreeDimensions(): boolean {
  const context = document.createElement("canvas").getContext("webgl2");
  context?.getExtension("WEBGL_lose_context")?.loseContext();
  return context !== null;
}
