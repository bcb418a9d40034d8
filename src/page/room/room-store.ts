/** What a teacher noted of a seat. */
export interface SeatNote {
  /** Sessions that it was here in, counted from 0. */
  readonly here: readonly number[];
  readonly page: number | undefined;
  readonly finished: boolean;
}

/** Notes of a class by seat numbers. */
export type RoomNotes = Readonly<Record<string, SeatNote>>;

const keyOf = (slug: string): string => `leaflight-room-${slug}`;

/** What this device keeps of a class; nothing of what cannot be read. */
export function keptNotes(slug: string): RoomNotes {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(keyOf(slug)) ?? "{}");
    const entries = kept !== null && typeof kept === "object" ? Object.entries(kept) : [];
    return Object.fromEntries(entries.flatMap(([seat, note]) => (/^\d+$/.test(seat) ? [[seat, noteOf(note)]] : [])));
  } catch {
    return {};
  }
}

/** Keeps them; says whether it could. */
export function keepNotes(slug: string, notes: RoomNotes): boolean {
  try {
    localStorage.setItem(keyOf(slug), JSON.stringify(notes));
    return true;
  } catch {
    return false;
  }
}

function noteOf(note: unknown): SeatNote {
  const { here, page, finished } = (note ?? {}) as Readonly<Record<string, unknown>>;
  return {
    here: Array.isArray(here) ? here.filter((one) => Number.isInteger(one)) : [],
    page: Number.isInteger(page) && (page as number) > 0 ? (page as number) : undefined,
    finished: finished === true,
  };
}
