import { blockName } from "../../../episode";
import { exerciseOf, trainingBlocks, wordsOf } from "../../blocks";
import { defineRule } from "../../define-rule";
import { numbersSaid } from "../../numbers-said";

const STRETCH = /\b(?:stretch(?:es|ing)?|hold)\b/i;
const UNIT = /^[ -]?(s|secs?|seconds?|min|minutes?)\b/i;

export const maxWarmUpHold = defineRule({
  meta: {
    id: "max-warm-up-hold", version: 1, subject: "structure", level: "consider", moment: "before filming",
    summary: "The warm-up of a heavy or fast session holds no stretch for a minute or more.",
    why: "A long held stretch right before costs a few percent of strength and speed. Moving through the range does not.",
    source: { title: "Behm et al., Appl Physiol Nutr Metab 41:1-11, 2016 (from memory)", at: "static stretching of 60 s and more per muscle: about 5 %" },
    defaults: { seconds: 60 },
    messages: { long: "{name}: a stretch held for {held} s before {lift}, less than {max} s expected. Move through it instead, or stretch at the end." },
  },
  check({ episode }, { seconds }, report) {
    const lift = trainingBlocks(episode).find((block) => exerciseOf(block)?.rampUp === true || exerciseOf(block)?.power === true);
    if (!lift) return;
    for (const block of episode.blocks.slice(0, episode.blocks.indexOf(lift)).filter(({ kind }) => kind === "warm-up")) {
      for (const line of wordsOf(block, "cue").filter(({ text }) => STRETCH.test(text))) {
        for (const { value, start, end } of numbersSaid(line.text)) {
          const unit = UNIT.exec(line.text.slice(end))?.[1];
          const held = unit === undefined ? 0 : /^m/i.test(unit) ? value * 60 : value;
          if (held >= seconds) report({ block, line, range: { start, end }, message: "long", data: { name: blockName(block), held, lift: blockName(lift), max: seconds } });
        }
      }
    }
  },
});
