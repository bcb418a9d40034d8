import { type FitHost, serveFits } from "./draft/serve-fits.ts";
import { type SeatHost, serveSeats } from "./seats/judge-seats.ts";

/** The desk's workers, by their names: one judges seats, the others work kits out. */
if (self.name === "seats") serveSeats(self as unknown as SeatHost);
else serveFits(self as unknown as FitHost);
