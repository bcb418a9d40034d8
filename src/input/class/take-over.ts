/** What a class takes over from another one, by the values of their front matters. */

/** What a class has of its own, and never from another. */
const OWN: readonly string[] = ["from", "date", "announced", "state", "books", "seats"];

/** The name of the class that a front matter takes over from; undefined where it stands by itself. */
export function takesFrom(value: unknown): string | undefined {
  return isRecord(value) && value["from"] !== undefined ? String(value["from"]) : undefined;
}

/** A front matter with all that it does not state itself from another one. */
export function withTaken(value: unknown, other: unknown): unknown {
  return isRecord(value) ? { ...takenFrom(other, value["date"]), ...value } : value;
}

function takenFrom(value: unknown, date: unknown): Record<string, unknown> {
  if (!isRecord(value)) return {};
  const taken = Object.fromEntries(Object.entries(value).filter(([key]) => !OWN.includes(key)));
  const { sessions } = taken;
  return Array.isArray(sessions)
    ? { ...taken, sessions: sessions.map((one) => moved(one, value["date"], date)) }
    : taken;
}

/** A session as many days after a class's day as it was after another's. */
function moved(session: unknown, from: unknown, to: unknown): unknown {
  if (!isRecord(session)) return session;
  const [day, before, after] = [session["date"], from, to].map(dayOf);
  if (day === undefined || before === undefined || after === undefined) return session;
  return { ...session, date: new Date(day + after - before).toISOString().slice(0, "2027-01-14".length) };
}

/** A day as milliseconds; undefined where it is none. */
function dayOf(text: unknown): number | undefined {
  const time = typeof text === "string" ? Date.parse(`${text}T00:00Z`) : Number.NaN;
  return Number.isNaN(time) ? undefined : time;
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
