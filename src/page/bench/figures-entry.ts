import { stepFigure } from "./step-figure.ts";

/** Script that a bench page fetches when the first step lies on the bench. */
self.leaflightStepFigure = stepFigure;
