/** What a frame hands over. @throws Error where its name there is misspelt, and so stands for nothing */
export function stated<T>(value: T | undefined): T {
  if (value === undefined) throw new Error("a frame hands over a name that is not defined");
  return value;
}
