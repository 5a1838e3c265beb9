import { PRACTICE } from "../../blocks";
import { defineRule } from "../../define-rule";

/** Floor time is planned in whole minutes; a begun one counts. */
const minutes = (seconds: number): string => `${Math.ceil(seconds / 60)} min`;

export const sessionOverSlot = defineRule({
  meta: {
    id: "session-over-slot", version: 1, subject: "structure", level: "fix", moment: "before filming",
    summary: "The session fits the time booked on the floor.",
    why: "When the slot ends, what was not filmed stays unfilmed, usually the cool-down and the closing.",
    source: PRACTICE,
    messages: { over: "The session takes {planned}, the slot is {slot}: {over} too long. Cut a set or an exercise, or book more time." },
  },
  check({ clocks: { gym } }, _options, report) {
    const over = gym.seconds - gym.slotSeconds;
    if (over <= 0) return;
    report({ words: "over the slot", message: "over", data: { planned: minutes(gym.seconds), slot: minutes(gym.slotSeconds), over: minutes(over) } });
  },
});
