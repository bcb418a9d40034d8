/** Minutes as a duration of ISO 8601 (ISO 8601-1, 5.5.2), to the minute: `PT1H30M`. */
export function isoDuration(minutes: number): string {
  const whole = Math.round(minutes);
  const hours = Math.floor(whole / 60);
  const rest = whole % 60;
  return `PT${hours > 0 ? `${hours}H` : ""}${rest > 0 || hours === 0 ? `${rest}M` : ""}`;
}
