import { type FitHost, serveFits } from "./draft/serve-fits.ts";

serveFits(self as unknown as FitHost);
