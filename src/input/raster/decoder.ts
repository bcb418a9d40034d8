import { runAsWorker } from "synckit";
import { decode } from "./decode.ts";

/** The thread that decodes while the reader of a kit waits: see read-pixels.ts. */
runAsWorker(decode);
