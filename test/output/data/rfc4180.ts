/** The records of a CSV text after RFC 4180: CRLF ends a record, fields may be quoted, a quote inside is doubled. */
export function parseCsv(text: string): string[][] {
  const records: string[][] = [];
  let record: string[] = [];
  let at = 0;
  while (at < text.length) {
    let field = "";
    if (text[at] === '"') {
      at += 1;
      while (text[at] !== '"' || text[at + 1] === '"') {
        if (at >= text.length) throw new Error("a quoted field does not end");
        at += text[at] === '"' ? 1 : 0;
        field += text[at];
        at += 1;
      }
      at += 1;
    } else {
      while (at < text.length && !',"\r\n'.includes(text[at]!)) {
        field += text[at];
        at += 1;
      }
    }
    record.push(field);
    if (text[at] === ",") {
      at += 1;
      if (at === text.length) throw new Error("the last record does not end");
      continue;
    }
    if (text.slice(at, at + 2) !== "\r\n")
      throw new Error(`no CRLF at ${at}: ${JSON.stringify(text.slice(at, at + 10))}`);
    at += 2;
    records.push(record);
    record = [];
  }
  return records;
}
