import { bindSeats } from "./room-seats.ts";
import { bindShow } from "./show.ts";

/** Script of the page that a teacher has open in the room. */
const room = document.querySelector<HTMLElement>("[data-room]");
if (room) {
  const seats = bindSeats(room);
  bindShow(room, seats.show);
  const print = room.querySelector<HTMLButtonElement>("[data-print]")!;
  print.hidden = false;
  print.addEventListener("click", () => window.print());
}
