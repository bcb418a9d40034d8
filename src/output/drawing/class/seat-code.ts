import encodeQR from "qr";
import { escapeXml } from "../../xml.ts";
import type { Figure } from "../figure.ts";

/** Free modules round the code: ISO/IEC 18004 asks for four (from memory). */
const QUIET = 4;

/** An address, or a seat's row, as a QR code, one path of squares; a module is one unit. */
export function seatCode(address: string, label: string): Figure {
  const modules = encodeQR(address, "raw", { ecc: "medium", border: QUIET });
  const size = modules.length;
  const squares = modules.flatMap((row, y) => row.flatMap((dark, x) => (dark ? [`M${x} ${y}h1v1h-1z`] : [])));
  return {
    label,
    svg: `<svg class="seat-code" viewBox="0 0 ${size} ${size}" role="img" aria-label="${escapeXml(label)}" shape-rendering="crispEdges"><path d="M0 0H${size}V${size}H0Z" fill="#fff"/><path d="${squares.join("")}" fill="#000"/></svg>`,
  };
}
