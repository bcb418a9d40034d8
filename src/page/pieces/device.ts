/** Where this device's name stands. */
const KEY = "leaflight-device";

/** A name that no other device or piece has. */
export function freshId(): string {
  // Pages of a host without encryption have none.
  const own: (() => string) | undefined = crypto.randomUUID?.bind(crypto);
  if (own) return own();
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** What this device counts its changes under; made once, or for this page alone where nothing can be kept. */
export function deviceName(): string {
  made ??= kept() ?? freshId();
  return made;
}

let made: string | undefined;

function kept(): string | undefined {
  try {
    const name = localStorage.getItem(KEY);
    if (name !== null && /^[0-9a-z-]{1,36}$/.test(name)) return name;
    const fresh = freshId();
    localStorage.setItem(KEY, fresh);
    return fresh;
  } catch {
    return undefined;
  }
}
