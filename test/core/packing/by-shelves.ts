/** An independent packing to compare with: pieces on shelves, next fit by decreasing height (Coffman, Garey, Johnson and Tarjan, 1980), each lying down. */
export function shelfSheets(
  pieces: readonly { readonly width: number; readonly height: number }[],
  sheet: { readonly width: number; readonly height: number },
  apart: number,
): number {
  const lying = pieces
    .map(({ width, height }) => {
      const [long, short] = width >= height ? [width, height] : [height, width];
      return long <= sheet.width ? { width: long, height: short } : { width: short, height: long };
    })
    .sort((a, b) => b.height - a.height);
  let sheets = 0;
  let top = Number.POSITIVE_INFINITY;
  let shelf = 0;
  let left = Number.POSITIVE_INFINITY;
  for (const { width, height } of lying) {
    if (left + width > sheet.width) {
      top += shelf === 0 ? 0 : shelf + apart;
      left = 0;
      shelf = height;
      if (top + height > sheet.height) {
        sheets += 1;
        top = 0;
      }
    }
    left += width + apart;
  }
  return sheets;
}

/** Sheets that the pieces' own area alone needs. */
export function areaSheets(
  areas: readonly number[],
  sheet: { readonly width: number; readonly height: number },
): number {
  return Math.ceil(areas.reduce((a, b) => a + b, 0) / (sheet.width * sheet.height) - 1e-9);
}
