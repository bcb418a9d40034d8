/** Whether packets are printed while this process serves a site. */
let printed = true;

export function serveWithoutPackets(): void {
  printed = false;
}

export function servesPackets(): boolean {
  return printed;
}
