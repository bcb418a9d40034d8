/** What pages of one device tell each other. */
const CHANNEL = "leaflight-pieces";

/** Tells other pages which piece was changed, and hears of theirs. */
export class PieceNews {
  readonly #channel = "BroadcastChannel" in self ? new BroadcastChannel(CHANNEL) : undefined;

  tell(id: string): void {
    this.#channel?.postMessage(id);
  }

  follow(changed: (id: string) => void): void {
    this.#channel?.addEventListener("message", ({ data }: MessageEvent<string>) => changed(data));
  }
}
