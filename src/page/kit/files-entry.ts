import { fittedFile } from "./files.ts";

/** Script that a kit page fetches when the reader asks for a file of her own book. */
self.leaflightFile = fittedFile;
