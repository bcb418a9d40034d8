import type { Point } from "../../core/geometry/point.ts";

/** Letters as a pencil draws them, stroke by stroke: pairs of digits are places across (0 to 4) and down (0 to 6). */
const STROKES: Readonly<Record<string, string>> = {
  A: "062046 1333",
  B: "06003041423303 3344453606",
  C: "4130100105163645",
  D: "00204244260600",
  E: "40000646 0333",
  F: "400006 0333",
  G: "41301001051636454323",
  H: "0006 4046 0343",
  I: "2026",
  J: "4045361605",
  K: "0006 400346",
  L: "000646",
  M: "0600234046",
  N: "06004640",
  O: "103041453616050110",
  P: "06003041423303",
  Q: "103041453616050110 2446",
  R: "06003041423303 2346",
  S: "413010010213334445361605",
  T: "0040 2026",
  U: "000516364540",
  V: "002640",
  W: "0016233640",
  X: "0046 4006",
  Y: "002340 2326",
  Z: "00400646",
  "0": "103041453616050110 1531",
  "1": "112026",
  "2": "01103041420646",
  "3": "004022324345361605",
  "4": "36300444",
  "5": "400002324345361605",
  "6": "30100105163645443303",
  "7": "004026",
  "8": "103041423313020110 3344453616050413",
  "9": "43130201103041453616",
  "-": "1333",
};

/** Height of a letter and from one letter to the next, in its own places. */
const HEIGHT = 6;
const ADVANCE = 6;
const GAP = 2;

/** Words in the letters there are: large ones without accents; others are left out. */
export function inStrokes(words: string): string {
  const plain = words.normalize("NFD").replace(/\p{M}/gu, "").toUpperCase();
  return [...plain]
    .map((letter) => (letter in STROKES ? letter : " "))
    .join("")
    .replace(/ +/g, " ")
    .trim();
}

/** Width of words in stroke letters of a height, mm. */
export function strokesWidth(words: string, height: number): number {
  return ((words.length * ADVANCE - GAP) * height) / HEIGHT;
}

/** The strokes of words in letters of a height, mm from their upper left corner. */
export function strokesOf(words: string, height: number): Point[][] {
  const scale = height / HEIGHT;
  return [...words].flatMap((letter, i) =>
    (STROKES[letter]?.split(" ") ?? []).map((stroke) =>
      (stroke.match(/../g) ?? []).map(([x, y]): Point => [(Number(x) + i * ADVANCE) * scale, Number(y) * scale]),
    ),
  );
}
