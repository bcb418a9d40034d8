import { askBook } from "./ask-book.ts";

/** Script that the catalogue and a kit's page fetch when the reader wants to be asked for her book. */
self.leaflightMeasure = askBook;
