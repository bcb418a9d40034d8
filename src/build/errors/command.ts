import { foreseen } from "./foreseen.ts";
import { programFault } from "./program-fault.ts";

/** How a command ends: all went well; something is to be mended, in the content or on the machine; the program itself failed. */
export const EXIT = { done: 0, mend: 1, program: 2 } as const;

/**
 * Runs a command: whatever fails in it is told in a sentence, never as a trace, and decides the exit code. `after` is told, too,
 * where it failed.
 */
export async function runCommand(command: () => Promise<void>, after?: (error: unknown) => string): Promise<void> {
  for (const event of ["uncaughtException", "unhandledRejection"] as const)
    process.on(event, (error: unknown) => process.exit(tellFailure(error)));
  try {
    await command();
  } catch (error) {
    process.exitCode = tellFailure(error, after);
  }
}

/** Tells why a command failed. @returns its exit code */
export function tellFailure(error: unknown, after?: (error: unknown) => string): number {
  const told = foreseen(error);
  console.error(told ?? programFault(error, process.cwd()));
  if (after) console.error(`\n${after(error)}`);
  return told === undefined ? EXIT.program : EXIT.mend;
}
