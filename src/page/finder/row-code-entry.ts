import { seatCode } from "../../output/drawing/class/seat-code.ts";

/** Script that a class's page fetches when a seat's row is written. */
self.leaflightCode = (text, label) => seatCode(text, label).svg;
