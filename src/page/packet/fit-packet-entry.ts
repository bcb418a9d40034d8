import { layOut } from "./lay-out.ts";

/** Script that a packet page fetches where its address carries a book. */
self.leaflightPacket = layOut;
