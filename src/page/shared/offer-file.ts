/** Lets a link give a text as a file. */
export function offerFile(link: HTMLAnchorElement, text: string, name: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: "text/plain" }));
  link.href = address;
  link.download = name;
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
