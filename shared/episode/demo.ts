import { emptyBlock, emptyEpisode, newLine } from "./create";
import { countingIds, type NewId } from "./ids";
import type { Block, BlockKind, Episode, LineKind, SetRole } from "./schema";

const newId = countingIds("demo-");

/** `cue: text` lines as a coach would type them; `sets:`, `ramp-up:` and `if taken:` fill the block's own lists. */
function block(kind: BlockKind, title: string, fields: Partial<Block>, script: string): Block {
  const made = emptyBlock(newId, kind, { title, ...fields });
  for (const row of script.trim().split("\n")) {
    const [, word = "", text = ""] = /^\s*([a-z -]+): (.*)$/.exec(row) ?? [];
    if (word === "sets" || word === "ramp-up") made.sets.push({ id: newId(), role: (word === "sets" ? "working" : "ramp-up") satisfies SetRole, text });
    else if (word === "if taken") made.alternates.push({ id: newId(), text });
    else made.lines.push(newLine(newId, word as LineKind, text));
  }
  return made;
}

const blocks = (): Block[] => [
  block("opening", "Opening", { clipSeconds: 36, minutes: 1 }, `
say: A heavy backpack is a carry that lasts all day. Today we build the back, the trunk and the grip for it. / Ad: Fernhill Oats sent me free oats, and nobody told me what to say.
shot: Three-quarter, medium, 12 s: to camera beside the rack, backpack on one shoulder
shot: Insert, 4 s, nice: hands closing the chest strap
note: Ask the front desk first. Nobody else in frame, the mirrors included.`),
  block("warm-up", "Warm-up", { clipSeconds: 60, minutes: 8, station: "free floor" }, `
cue: Three minutes on the rower or a brisk walk, easy enough to talk
cue: Ten slow circles each: ankles, knees, hips, upper back, shoulders, elbows, wrists
cue: Ten easy squats to a box, ten wall slides, ten band pull-aparts
say: Eight minutes, and start with something that makes you slightly out of breath. Then circles from the ankles up. / If a joint feels stiff, give it five more. If it hurts, leave it out today.
shot: Front, full, 20 s: circles, one joint after the other
shot: Side, full, 12 s: squats to a box`),
  block("exercise", "Chest-supported row", { exercise: "chest-supported-row", clipSeconds: 110, station: "incline bench" }, `
ramp-up: 1 x 8 @ 12 kg each hand, rest 60 s
sets: 3 x 8-10 @ 22 kg each hand, tempo 3-1-1-0, rest 90 s, RIR 2
cue: Drive the elbows towards the back pockets
cue: Pause for one second with the shoulder blades together
avoid: Lifting the chest off the pad to finish the rep: end the set there instead
caution: Sharp pain at the front of the shoulder: stop, go lighter or leave it out today
say: Lie chest down on a bench set at about thirty degrees. Three sets of eight to ten, three seconds down on every one. / Same weight for every set. The last two reps should slow down on their own, and if your neck feels it more than your back, look at the floor.
shot: Side, full, set 2, 20 s: the whole arm path and the chest on the pad
shot: Rear, medium, set 3, 15 s: shoulder blades together, then apart
shot: Insert, 6 s, nice: grip on the handle, wrist straight
if taken: Dumbbell row with one hand on a bench, same set line`),
  block("exercise", "Half-kneeling landmine press", { exercise: "half-kneeling-landmine-press", clipSeconds: 95, station: "landmine corner" }, `
ramp-up: 1 x 8 each side @ 7.5 kg, rest 45 s
sets: 3 x 8 each side @ 15 kg, rest 75 s
cue: Ribs down, squeeze the glute of the knee on the floor
cue: Press up and slightly away: the bar moves on an arc
avoid: Leaning back to get the bar up: take a plate off instead
caution: Pinching at the top of the shoulder: lower the angle or stop
say: Knee on a pad, other foot flat, the bar in front of the shoulder. / Eight on each side, and the side you start with should be the weaker one. Breathe out as the bar goes up.
shot: Side, full, set 1, 15 s: ribs stay over the hips
shot: Front, medium, set 2, 12 s: the front knee stays over the foot
if taken: One-arm dumbbell press, half-kneeling, light`),
  block("exercise", "Goblet squat", { exercise: "goblet-squat", clipSeconds: 17, station: "free floor" }, `
sets: 3 x 10 @ 20 kg, tempo 3-1-1-0, rest 90 s
cue: Sit between the heels, elbows inside the knees
cue: Knees travel in line with the toes, whole foot on the floor
avoid: Letting the knees fall in on the way up: push the floor apart instead
caution: Knee or hip pain: squat to a box, lighter, or leave it out
say: This is how you get up from the ground with the pack on. Bell close, chin over the bell, ten reps in three seconds down. / Stop where your back would start to change shape; that depth is yours, and it will grow. If your heels lift, put a small plate under them and carry on.
shot: Side, full, set 1, 15 s: back shape at the bottom
shot: Front, full, set 2, 15 s: knees over toes
if taken: Bodyweight squat to a box, slow`),
  block("exercise", "Farmer's carry", { exercise: "farmers-carry", clipSeconds: 100, station: "turf lane" }, `
sets: 4 x 40 m @ 24 kg each hand, rest 60 s
cue: Crown of the head up, shoulders level
cue: Short, quiet steps, breathe all the way
avoid: Leaning or hurrying when the grip tires: put the bells down and rest instead
caution: Back pain or a slipping grip: put the weights down, do not save them
say: Forty metres there and back, four times. Walk as if late, but polite. / Breathe, talk if you can. When the grip goes, the set is over. Watch the lane: people cross it without looking.
shot: Front, full, set 1, 15 s: walking towards the camera, shoulders level
shot: Side, full, set 2, 15 s: steps and posture
if taken: Suitcase carry, one bell, 20 m each side`),
  block("exercise", "Anti-rotation press", { exercise: "anti-rotation-press", clipSeconds: 80, station: "cable tower" }, `
sets: 2 x 12 each side @ 10 kg, tempo 2-1-2-0, rest 60 s
cue: Press straight out from the breastbone and stay square
cue: Soft knees, ribs over hips
avoid: Turning towards the cable: take less weight instead
caution: Back pain: step closer, go lighter, or leave it out
say: Last one, and the quietest. Stand side on to the cable and press straight out. / The cable would love you to turn. Twelve on each side, then swap. This is what keeps a swinging pack from steering you.
shot: Front, medium, set 1, 15 s: hands in front of the breastbone
shot: High, full, set 2, 8 s, nice: hips and ribs stay square
if taken: The same with a band tied at chest height`),
  block("cool-down", "Cool-down", { clipSeconds: 60, minutes: 5, station: "free floor" }, `
cue: Two minutes of easy walking, then slow breaths lying on your back
cue: Easy stretch for chest and hips, thirty seconds each side, never into pain
say: Five minutes to come down. Walk until your breath is your own again, then lie down and let the ribs sink. / A mild pull is enough; stretching is not a contest.
shot: Side, wide, 15 s: walking out of frame, then lying down`),
  block("closing", "Closing", { clipSeconds: 22, minutes: 1 }, `
say: That is the strong part of the trail. The plan is below this video, with room for your own numbers. / Start lighter than I did, and if something hurts, ask a coach or a doctor who can look at you. Next Sunday: steps, steep ones.`),
];

/** Episode 7 of the invented series: complete but for a closing shot and a few words too many over the squat. */
export const demoEpisode: Episode = emptyEpisode(() => "demo-strong-for-the-trail-7", {
  title: "Rows, presses, carries",
  series: { name: "Strong for the Trail", number: 7, coach: "Odalys Brandt", quiet: [] },
  audience: { level: "beginner", groups: [] },
  session: {
    place: "Harbour Street Strength Room", date: "2027-03-04", time: "06:45", slotMinutes: 75,
    kit: ["Phone and tripod", "Clip-on microphone", "Spare battery", "Chalk", "Tape for marks", "Backpack"],
    units: "kg", alone: true, cameras: 1,
  },
  video: { targetSeconds: 600, frameRate: "29.97 drop", aspect: "16:9" },
  publish: { date: "2027-03-07", time: "12:00", zone: "Etc/UTC" },
  partners: [{ id: "demo-partner-1", name: "Fernhill Oats", relation: "gifted", disclosure: "Ad: Fernhill Oats sent Odalys free oats. Nobody told her what to say." }],
  blocks: blocks(),
  carryOver: [
    { exercise: "chest-supported-row", sets: "3 x 8-10 @ 20 kg each hand, tempo 3-1-1-0, rest 90 s", actuals: [{ set: 1, load: 20, reps: 10, rir: 3 }, { set: 2, load: 20, reps: 10, rir: 2 }, { set: 3, load: 20, reps: 10, rir: 2 }], note: "All sets at the top of the range: one step up." },
    { exercise: "goblet-squat", sets: "3 x 10 @ 20 kg, tempo 3-1-1-0, rest 90 s", actuals: [{ set: 1, load: 20, reps: 10, rir: 2 }], note: "" },
  ],
});

/** The demo to begin an episode of one's own with: the same words under an id of its own, or what belongs to one would be taken for the other's. */
export const newDemo = (newId: NewId): Episode => ({ ...demoEpisode, id: newId() });
