/**
 * Cues that cannot both be followed: a body part, and the two ways it is sent. `one` and `other` read a single cue.
 * Common practice, no source.
 */
export interface Opposites {
  readonly part: string;
  readonly one: { readonly name: string; readonly says: RegExp };
  readonly other: { readonly name: string; readonly says: RegExp };
}

const pair = (part: string, one: [string, RegExp], other: [string, RegExp]): Opposites => ({
  part, one: { name: one[0], says: one[1] }, other: { name: other[0], says: other[1] },
});

const UP = "(?:on the way up|as (?:you|the \\w+) (?:go(?:es)?|come|comes|press|presses|stand|rise|lift|push|drive|pull)(?: up)?|on the (?:press|lift|pull|push|effort|hard part)|going up)";
const DOWN = "(?:on the way down|as (?:you|the \\w+) (?:go(?:es)? down|come down|comes down|lower|lowers|sink)|going down|on the lowering)";
const breathe = (way: string, when: string): RegExp => new RegExp(`\\b(?:breathe ${way}|${way === "in" ? "inhale" : "exhale"})\\b[^.;]{0,20}\\b${when}`, "i");

export const OPPOSITES: readonly Opposites[] = [
  pair("elbows", ["in", /\belbows? (?:in\b(?! line| front)|tucked|close|tight|at your sides|to your sides)|\btuck (?:your|the) elbows\b/i], ["out", /\belbows? (?:out\b|wide|flar(?:ed|ing)|winging)|\bflar(?:e|ing) (?:your|the) elbows\b/i]),
  pair("chin", ["tucked", /\bchin (?:tucked|in\b|down\b|to (?:your|the) chest)|\btuck (?:your|the) chin\b/i], ["up", /\bchin (?:up\b|high|lifted)|\blift (?:your|the) chin\b/i]),
  pair("eyes", ["down", /\b(?:eyes|gaze) (?:down\b|on the floor|to the floor)|\blook (?:down\b|at the floor)/i], ["up", /\b(?:eyes|gaze) (?:up\b|on the ceiling)|\blook up\b/i]),
  pair("knees", ["out", /\bknees? (?:out\b|apart|wide)|\b(?:push|drive|press) (?:your |the )?knees (?:out|apart)|\b(?:spread|open) (?:your |the )?knees\b/i], ["in", /\bknees? (?:(?:fall|falling|cave|caving|drop|dropping|knocking) )?(?:in\b(?! line)|together|inward)|\bknees? caving\b|\bsqueeze (?:your |the )?knees (?:in|together)/i]),
  pair("feet", ["together", /\bfeet (?:together|close|narrow)/i], ["wide", /\bfeet (?:wide|wider|apart)/i]),
  pair("toes", ["forward", /\btoes (?:forward|straight ahead|pointing forward)/i], ["out", /\btoes (?:out\b|turned out|pointing out)/i]),
  pair("shoulders", ["down", /\bshoulders? (?:down\b|low\b|away from (?:your|the) ears)/i], ["up", /\bshoulders? (?:up\b|to (?:your|the) ears|high\b|shrugged)|\bshrug/i]),
  pair("ribs", ["down", /\bribs? (?:down\b|in\b|over (?:your |the )?hips)/i], ["up", /\bribs? (?:up\b|out\b|flared|high)|\bflare (?:your|the) ribs/i]),
  pair("knees", ["locked", /\b(?:lock (?:your |the )?knees|knees (?:locked|straight)\b)/i], ["soft", /\b(?:soft knees|knees (?:soft|bent|slightly bent)|bend (?:your |the )?knees)/i]),
  pair("elbows", ["locked", /\b(?:lock (?:your |the )?elbows|elbows (?:locked|straight(?! out))\b)/i], ["soft", /\b(?:soft elbows?|elbows? (?:soft|slightly bent))/i]),
  pair("back", ["arched", /\barch (?:your|the) (?:lower )?back\b|\bback arched\b/i], ["flat", /\b(?:flat back|neutral (?:back|spine)|back flat|flatten (?:your|the) (?:lower )?back)/i]),
  pair("back", ["flat", /\b(?:flat back|neutral (?:back|spine)|back (?:flat|long|straight))\b/i], ["round", /\bround(?:ing)? (?:your|the) (?:low(?:er)? |upper )?back\b|\bback round(?:s|ed|ing)\b/i]),
  pair("heels", ["down", /\bheels? (?:down|flat|on the floor|heavy)\b/i], ["up", /\bheels? (?:up|high|lift(?:ed|ing)?|off the (?:floor|ground))\b|\blift (?:your|the) heels\b/i]),
  pair("weight", ["on the heels", /\b(?:weight|press|push|sit)\b[^.;]{0,14}\b(?:in|on|into|through|back on|to) (?:your |the )?heels/i], ["on the toes", /\b(?:weight|press|push|come up)\b[^.;]{0,14}\b(?:in|on|onto|into|through) (?:your |the )?(?:toes|balls of)/i]),
  pair("breath on the way up", ["in", breathe("in", UP)], ["out", breathe("out", UP)]),
  pair("breath on the way down", ["in", breathe("in", DOWN)], ["out", breathe("out", DOWN)]),
  pair("speed down", ["slow", /\b(?:slow(?:ly)? (?:down|on the way down)|lower slowly|down slowly|(?:two|three|four|2|3|4) seconds down)/i], ["fast", /\b(?:drop fast|fast (?:down|on the way down)|down fast|lower quickly)/i]),
  pair("grip", ["wide", /\b(?:wide grip|grip (?:wide|wider)|hands wide)/i], ["narrow", /\b(?:narrow grip|close grip|grip (?:narrow|close)|hands close)/i]),
];
