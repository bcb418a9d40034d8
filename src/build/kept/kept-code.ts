import { enableCompileCache } from "node:module";

/** Brought in before a command (`node --import`), and so into each of its threads: what Node has compiled of the code is kept for the next run. Where that cannot be, nothing is kept. */
enableCompileCache(".cache/code");
