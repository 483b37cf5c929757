import { answerRoom } from "./answer-room.js";
import type { RoomMessage, RoomRequest } from "./room-protocol.js";

/** Rest between two words about how far the work has come [ms]. */
const TELL_EVERY_MS = 150;

/** Answers the questions of a room off the page's own thread, one after the other. */
addEventListener("message", (event: MessageEvent<RoomRequest>) => {
  const { turn, question } = event.data;
  const tell = (message: RoomMessage) => postMessage(message);
  let told = performance.now();
  const answered = answerRoom(question, (share, words) => {
    if (performance.now() - told < TELL_EVERY_MS) return;
    told = performance.now();
    tell({ turn, share, words });
  });
  tell({ turn, answered });
});
