/** Runs at the process's end, whatever ends it but a kill; it cannot wait for anything. */
export type CleanUp = () => void;

const waiting = new Set<CleanUp>();
let listening = false;

/** Runs `cleanUp` when the process ends, unless the answer is called before. */
export function atExit(cleanUp: CleanUp): () => void {
  waiting.add(cleanUp);
  if (!listening) process.on("exit", runAll);
  listening = true;
  return () => waiting.delete(cleanUp);
}

/** Ends the process as its shell expects it when a person or the system interrupts it, with all that is to be cleaned up. */
export function endWhenInterrupted(): void {
  for (const [signal, number] of [
    ["SIGINT", 2],
    ["SIGTERM", 15],
    ["SIGHUP", 1],
  ] as const)
    process.once(signal, () => process.exit(128 + number));
}

function runAll(): void {
  for (const cleanUp of waiting) {
    try {
      cleanUp();
    } catch {
      // The next start clears what stays.
    }
  }
}
