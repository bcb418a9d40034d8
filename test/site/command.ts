/** Words for Node that run a command of the program as its npm script does. */
export function commandWords(command: string, ...options: readonly string[]): string[] {
  return ["--import", "./src/build/kept/kept-code.ts", command, ...options];
}
