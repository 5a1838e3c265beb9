import { duration, PRACTICE } from "../../blocks";
import { defineRule } from "../../define-rule";

export const maxVideoLength = defineRule({
  meta: {
    id: "max-video-length", version: 1, subject: "publishing", level: "consider", moment: "before publishing",
    summary: "The finished video is not longer than its target.",
    why: "The target is the time viewers of the series are used to give.",
    source: PRACTICE,
    messages: { over: "The video comes to {length}, the target is {target}: {over} too long. Shorten a block, or change the target." },
  },
  check({ clocks: { screen } }, _options, report) {
    const over = screen.seconds - screen.targetSeconds;
    if (over < 1) return;
    report({ words: "over the target", message: "over", data: { length: duration(screen.seconds), target: duration(screen.targetSeconds), over: duration(over) } });
  },
});
