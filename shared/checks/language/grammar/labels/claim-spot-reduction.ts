import type { LabelReader } from "../../types";

/** An exercise is said to take fat from one chosen place. */
export const claimSpotReduction: LabelReader = {
  label: "claim-spot-reduction",
  ruling: "An exercise is said to take fat from one chosen place, which training does not do.",
  patterns: [
    { find: "<reduce> ~4 <area> ~1 <flab>", without: "press|feel_the", family: "core", example: "This burns belly fat." },
    { find: "<reduce> ~5 <bulge>", family: "core", example: "Say goodbye to love handles." },
    { find: "<bulge> ~4 <vanish>", family: "arm-isolation", example: "Watch those bingo wings disappear." },
    { find: "kiss|wave|say ~4 <bulge>|<flab> ~1 goodbye|bye|farewell|bye-bye", family: "core", example: "Kiss the muffin top goodbye." },
    { find: "<area> ~1 <flab> ~4 <vanish>", family: "core", example: "The belly fat will melt away." },
    { find: "<reduce>|take|takes ~3 inches|inch|centimetres ~3 from|off|exactly|around|where|of ~3", without: "raise|lower|squat", family: "cable", example: "It takes inches off your waist." },
    { find: "<reduce> ~3 <flab> ~3 off|from|on|around|over|round|under your|the ~1 <area>", family: "core", example: "Melt the fat off your thighs." },
    { find: "soft|softness|wobbly|jiggly|flabby|squishy ~1 layer|bit%|bits|part%|stuff ~3 over|on|round|around|under ~2", as: "flat", with: "<reduce>", without: "don't|can't|won't|not|no", family: "horizontal-press", example: "Gets rid of the soft bit under the arm." },
    { find: "belly-slimming|leg-slimming|arm-slimming|belly-busting|fat-burning_abs|waist-slimming|tummy-trimming|thigh-slimming|belly-flattening", family: "core", example: "A tummy-trimming finisher." },
    { find: "flatten+|slim+|shrink|shrinks|whittle+|narrow+|tone_away|thin_out|thins_out|trim+|carve+|melt+ ~1 your|the ~1 waist|waistline|thighs|belly|tummy|stomach|midsection|hips|bum|arms|middle", without: "brace|pull|draw|scar", family: "core", example: "Shrink your waist with one move." },
    { find: "smaller|slimmer|tinier|thinner|flatter ~1 waist|waistline|thighs|belly|tummy|stomach|middle|midsection", family: "core", example: "Twenty of these for a slimmer waist." },
    { find: "spot-reduc*|spot_reduc*|targeted_fat_loss|target_fat|targets_fat", family: "core", example: "Spot-reduction at its best." },
    { find: "<takeoff> &6 <bodyfat>", without: "if_you|bread+|dinner+|drum+|roll_up|roll_down|roll_out|roll_back|sausage+|rolls_off|doesn't|don't|can't|won't|does_not|not|nobody|no_exercise|foam|roller|knees|shoulders_roll|hips_roll|pelvis|ankle%|roll_the|roll_your|roll_onto|roll_to|nothing", family: "row", example: "Twists strip the padding above your jeans." },
    { find: "<takeoff> ~3 your|the|that|those|inner|soft|flabby|wobbly ~1 thighs|waist|waistline|belly|tummy|hips|bum|middle|underarms|midsection|inner_thighs|lower_belly", without: "not|don't|can't|won't|never|fat_from_the|drop_the_hips|drop_your|hips_drop|lift|leave_the|lower|back|sink|weight|squeeze_the|push|pull|into|touch|picks|bar|ache|to_the|target|from_the_hips|burn", family: "leg-machine", example: "This shrinks the inner thighs first." },
    { find: "<bodyfat> &.5 <bodypart> &.6 go|goes|gone|leaves|leaving|off|away|vanish|disappear|first|history|drop|drops|melts|shrinks|smaller|nowhere_to_hide|goodbye|bye", without: "don't|not|can't|doesn't|nobody|no_exercise|roll_off|roll_easily|rolls|roll|inches|chest_it's|won't|pad|over_all", family: "horizontal-press", example: "Belly fat goes first." },
    { find: "slim|slims|slimmer|slimming|trim|trimmer|smaller|tighter|narrower|thinner|skinnier|tinier ~1 <bodypart>", without: "not|grip|stance|doesn't|won't|no_exercise|laughed|arc|arms_tighter|steps|circle|range", family: "core", example: "Twenty of these for a slimmer middle." },
    { find: "crunch|curl|squeeze|twist|press|pull|lunge|pulse|plank|crunches|these|this|one ~2 here|there ~,3 it|fat|flab ~2 leaves|goes|melts|burns ~2 here|there|from", family: "cable", example: "Crunch here, it leaves from here." },
  ],
  silent: [
    { text: "You cannot burn belly fat with sit-ups.", family: "core" },
    { text: "Trains the abs; what you see depends on other things.", family: "core" },
    { text: "Your thighs will burn on this one.", family: "squat" },
    { text: "No exercise melts love handles.", family: "core" },
    { text: "Draw your tummy in and breathe.", family: "core" },
    { text: "Tighten the belly before the bar moves.", family: "hinge" },
    { text: "No exercise takes fat from one chosen place.", family: "core" },
  ],
};
