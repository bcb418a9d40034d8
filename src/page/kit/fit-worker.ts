import { loadBeside } from "../shared/load-beside.ts";
import { LoadError } from "../shared/load-script.ts";
import { type FromWorker, makeAsked, type ToWorker } from "./fit-asks.ts";
import { FitMaker } from "./fit-maker.ts";
import { Turns } from "./turns.ts";

/** Makes in a worker what a kit's page asks for: between two asks it hears whether a newer one came. */
export function serveFits(): void {
  const turns = new Turns();
  let maker: Promise<FitMaker>;
  const hear = (told: ToWorker): void => {
    if ("data" in told) {
      maker = loadBeside(told.data, "kit-data").then(() => new FitMaker(self.leaflightKit!, loadBeside));
      return;
    }
    const { id, turn, ask } = told;
    answer(
      id,
      turns.take(turn, async () => makeAsked(await maker, ask, told.with)),
    );
  };
  self.onmessage = ({ data }: MessageEvent<readonly ToWorker[]>): void => data.forEach(hear);
}

async function answer(id: number, made: Promise<unknown>): Promise<void> {
  tell(
    await made.then(
      (value) => ({ id, made: value }),
      (error) => (isNotFetched(error) ? { id, needed: error.needed } : { id, failed: true }),
    ),
  );
}

/** Whether something could not be fetched; the kit's data the page has already. */
function isNotFetched(error: unknown): error is LoadError {
  return error instanceof LoadError && error.needed !== "kit-data";
}

function tell(message: FromWorker): void {
  (self as unknown as { postMessage: (message: FromWorker) => void }).postMessage(message);
}
