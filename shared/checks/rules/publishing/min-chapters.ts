import { defineRule } from "../../define-rule";

export const minChapters = defineRule({
  meta: {
    id: "min-chapters", version: 1, subject: "publishing", level: "consider", moment: "before publishing",
    summary: "The video has enough parts for a list of chapters.",
    why: "Viewers come back for one exercise. Chapters take them there, and fewer than three are commonly refused.",
    source: { title: "Common rule of video platforms: first entry 0:00, at least three entries, each at least 10 s" },
    yieldsTo: ["min-chapter-seconds"],
    defaults: { min: 3, seconds: 10 },
    messages: { few: "{count} blocks are long enough for a chapter, at least {min} expected. Split a long block." },
  },
  check({ episode, clocks }, { min, seconds }, report) {
    const onScreen = clocks.screen.blocks.filter((block) => block.seconds > 0);
    const count = onScreen.filter((block) => block.seconds >= seconds).length;
    if (episode.blocks.length > 0 && clocks.screen.seconds > min * seconds && count < min) report({ words: `${count} chapters`, message: "few", data: { count, min } });
  },
});
