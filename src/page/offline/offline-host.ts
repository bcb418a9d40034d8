/** The parts of a service worker's surroundings that ours uses; the DOM library has only the page's side of them. */
export interface WorkerHost {
  readonly location: Location;
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(type: "install" | "activate", listener: (event: LastingEvent) => void): void;
  addEventListener(type: "fetch", listener: (event: AskedEvent) => void): void;
  addEventListener(type: "message", listener: (event: LastingEvent & MessageEvent) => void): void;
}

export interface LastingEvent extends Event {
  waitUntil(promise: Promise<unknown>): void;
}

export interface AskedEvent extends LastingEvent {
  readonly request: Request;
  respondWith(response: Promise<Response>): void;
}
