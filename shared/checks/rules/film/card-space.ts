import { recording } from "../../../filming";
import { PRACTICE } from "../../blocks";
import { defineRule } from "../../define-rule";

/** "64 GB card", "card, 32 GB free", "0.5 TB drive". */
const SPACE = /(\d+(?:[.,]\d+)?) ?(GB|TB)\b/i;

export const cardSpace = defineRule({
  meta: {
    id: "card-space", version: 1, subject: "film", level: "fix", moment: "before filming",
    summary: "The space named in the kit holds what is to be recorded.",
    why: "A full card stops the take in the middle of a set, and the set is not done twice.",
    source: { ...PRACTICE, at: "typical bitrate of a phone in 1080p30, with a margin of 40 %" },
    messages: { small: "About {minutes} min of recording need {needed} GB, and the kit has {space} GB. Clear or pack more." },
  },
  check({ episode }, _options, report) {
    const sizes = episode.session.kit.flatMap((item) => {
      const found = SPACE.exec(item);
      return found ? [Number((found[1] ?? "0").replace(",", ".")) * (/tb/i.test(found[2] ?? "") ? 1000 : 1)] : [];
    });
    if (sizes.length === 0) return;
    const space = sizes.reduce((sum, size) => sum + size, 0);
    const { minutes, gigabytes } = recording(episode);
    if (gigabytes > space) report({ words: `${space} GB`, message: "small", data: { minutes: Math.round(minutes), needed: Math.ceil(gigabytes * 10) / 10, space } });
  },
});
