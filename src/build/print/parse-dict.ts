import { PDFContext, PDFDict, PDFObjectParser } from "@cantoo/pdf-lib";

/** Reads a dictionary of a PDF. @throws Error where the text is none */
export function parseDict(text: string): PDFDict {
  const read = PDFObjectParser.forBytes(Buffer.from(text, "latin1"), PDFContext.create()).parseObject();
  if (read instanceof PDFDict) return read;
  throw new Error("no dictionary in a PDF");
}
