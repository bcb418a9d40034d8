/** A PDF of these objects, the first its catalog and the second what tells about it, with a plain table (ISO 32000 7.5.4). */
export function plainPdf(...objects: readonly string[]): Uint8Array {
  let text = "%PDF-1.4\n";
  const places: number[] = [];
  for (const [i, body] of objects.entries()) {
    places.push(text.length);
    text += `${i + 1} 0 obj\n${body}\nendobj\n`;
  }
  const entries = places.map((place) => `${String(place).padStart(10, "0")} 00000 n \n`).join("");
  const size = objects.length + 1;
  const table = `xref\n0 ${size}\n0000000000 65535 f \n${entries}`;
  return Buffer.from(
    `${text}${table}trailer\n<</Size ${size}\n/Root 1 0 R\n/Info 2 0 R>>\nstartxref\n${text.length}\n%%EOF\n`,
    "latin1",
  );
}
