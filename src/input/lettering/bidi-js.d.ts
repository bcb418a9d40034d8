/** The part of bidi-js's interface that this project calls; the package brings no types of its own. */
declare module "bidi-js" {
  export interface EmbeddingLevels {
    /** One for each code unit; odd where letters run from right to left. */
    readonly levels: Uint8Array;
  }

  export default function bidiFactory(): {
    getEmbeddingLevels(text: string, direction?: "ltr" | "rtl" | "auto"): EmbeddingLevels;
  };
}
