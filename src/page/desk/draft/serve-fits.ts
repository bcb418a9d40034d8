import type { LevelMap } from "../../../core/picture/level-map.ts";
import { type FitAnswer, type FitAsk, FitWork } from "./fit-work.ts";

/** What a worker that serves fits needs of where it runs. */
export interface FitHost {
  onmessage: ((event: { readonly data: FitAsk }) => void) | null;
  postMessage(answer: FitAnswer): void;
}

/** Works out in a worker what `FitBench` asks for. */
export function serveFits(host: FitHost): void {
  const work = new FitWork();
  let latest: LevelMap | undefined;
  host.onmessage = ({ data: { turn, stages, kit, picture } }) => {
    latest = picture ?? latest;
    const whole = { ...kit, picture: latest! };
    for (const stage of stages) {
      const found = work.find(whole, stage);
      if (found) host.postMessage({ turn, found });
    }
    host.postMessage({ turn, rests: true });
  };
}
