import { BuildError } from "../errors/build-error.ts";

/** A packet that cannot be printed as it must be, or no browser to print it with. */
export class PrintError extends BuildError {}
