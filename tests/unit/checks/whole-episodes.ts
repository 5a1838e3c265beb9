import type { Episode } from "../../../shared/episode";

/** Whole episodes as coaches write them, of many kinds: good ones, and ones with planted mistakes and the rules that must find them. */
export interface WholeEpisode {
  readonly name: string;
  readonly script: string;
  readonly fields: Partial<Episode>;
  /** Ids of rules that must speak; none for a good episode. */
  readonly planted: readonly string[];
}

const session = (o: Partial<Episode["session"]> = {}): Episode["session"] => ({ place: "Mill Lane Gym", date: "2027-03-04", time: "07:00", slotMinutes: 75, kit: ["Phone", "Tripod", "Spare battery"], units: "kg", alone: true, cameras: 1, ...o });
const facts = (o: Partial<Episode> = {}): Partial<Episode> => ({ title: "A session", series: { name: "Plain Strength", number: 3, coach: "Odalys Brandt", quiet: [] }, audience: { level: "intermediate", groups: [] }, session: session(), video: { targetSeconds: 900, frameRate: "30", aspect: "16:9" }, publish: { date: "2027-03-09", time: "12:00", zone: "Etc/UTC" }, ...o });
const open = (say: string) => `
[opening, clip 30, minutes 1] Opening
say: ${say}
shot: Three-quarter, medium, 10 s: to camera
note: Asked the front desk; nobody else in frame, mirrors checked.`;
const close = `
[cool-down, clip 40, minutes 5] Cool-down
cue: Two minutes of easy walking, then slow breaths lying down
cue: Easy stretch for hips and chest, thirty seconds each side
say: Walk until your breath is your own again. Then lie down and breathe slowly.
shot: Side, wide, 15 s: walking, then lying down
[closing, clip 20, minutes 1] Closing
say: That was it. Start lighter than I did, and ask a doctor or a coach if something hurts. See you on Sunday.
shot: Front, medium, 12 s: to camera, goodbye`;
const warm = `
[warm-up, clip 60, minutes 8] Warm-up
cue: Three minutes of brisk walking, easy enough to talk
cue: Ten slow circles each: ankles, knees, hips, shoulders, elbows, wrists
cue: Ten cat-camels for the low and upper back
say: Eight minutes. Get a little out of breath first, then move each joint from the ankles up.
shot: Front, full, 20 s: circles
shot: Side, full, 12 s: easy squats`;
const fullBody = (goblet = "3 x 10 @ 16 kg, rest 90 s, RIR 3", sayGoblet = "Three sets of ten. Stop each set with about three repetitions in reserve; that is what R I R means.", cue = "Knees in line with the toes") => `
[exercise goblet-squat, clip 60] Goblet squat
sets: ${goblet}
cue: Bell close to the chest, elbows down
cue: ${cue}
avoid: Heels coming off the floor: put a small plate under them instead
caution: Knee or hip pain: squat to a box or leave it out today
say: ${sayGoblet} If your heels lift, put something small under them.
shot: Side, full, set 1, 15 s: back shape at the bottom
shot: Front, full, set 2, 15 s: knees over toes
[exercise single-arm-dumbbell-row, clip 60] One-arm row
sets: 3 x 10 each side @ 14 kg, rest 60 s
cue: Pull the elbow towards the back pocket
cue: Keep your hips level
avoid: Twisting to get the bell up: take a lighter one instead
caution: Sharp pain in the shoulder or back: stop and go lighter
say: Ten on each side, three sets. Let the arm hang long, then pull the elbow back.
shot: Side, full, set 1, 15 s: arm path
shot: Rear, medium, set 2, 12 s: hips level
if taken: Band row
[exercise incline-push-up, clip 50] Push-up on a bench
sets: 3 x 8, rest 60 s
cue: One straight line from head to heels
cue: Lower for two seconds
avoid: Hips sagging: step closer to the bench instead
caution: Wrist pain: hold a pair of dumbbells as handles, or stop
say: Eight good ones. If that is easy, use a lower bench next time.
shot: Side, full, set 1, 15 s: straight line
if taken: Push-up against a wall`;
const many = Array.from({ length: 28 }, (_, i) => `
[exercise ${["goblet-squat", "push-up", "band-row", "plank"][i % 4]}, clip 20] Station ${i + 1}
sets: 1 x ${i % 4 === 3 ? "30 s" : "10"}, rest 30 s
cue: ${["Whole foot on the floor", "Straight line from head to heels", "Elbows past the ribs", "Ribs down, breathe"][i % 4]}
avoid: Hurrying: slow down instead
caution: Pain: stop and rest
note: Round ${Math.floor(i / 4) + 1} on purpose
say: Station ${i + 1}. Take your time and breathe.
shot: Side, full, 10 s: the whole movement
[talk, clip 12] Change ${i + 1}
say: Walk over to the next one, number ${i + 2}.
shot: Front, wide, 10 s: walking`).join("");
const SIXTY: WholeEpisode = ({ name: "sixty blocks", script: open("Twenty-eight stations. Ask a doctor first if you have a condition.") + warm + many + close, fields: facts({ session: session({ slotMinutes: 120 }) }), planted: ["no-repeated-sentence", "max-muscle-sets"] });

export const WHOLE_EPISODES: readonly WholeEpisode[] = [
  { name: "a full-body session for beginners", script: open("Three exercises for the whole body. If you are new or unwell, ask a doctor first.") + warm + fullBody() + close, fields: facts({ audience: { level: "beginner", groups: [] } }), planted: [] },
  { name: "full body, other numbers said and a short form unexplained", script: open("Three exercises for the whole body. If you are new or unwell, ask a doctor first.") + warm + fullBody("3 x 10 @ 16 kg, rest 90 s, rir 3", "Four rounds of ten, nice and smooth.", "Knees together all the way down") + close, fields: facts({ audience: { level: "beginner", groups: [] } }), planted: ["said-numbers", "no-unexplained-jargon"] },
  { name: "upper and lower body, heavy", script: open("Heavy squats, then rows and presses. Ask a professional first if you have a condition.") + warm + `
[exercise back-squat, clip 90] Back squat
ramp-up: 1 x 8 @ 20 kg, rest 60 s
ramp-up: 1 x 5 @ 50 kg, rest 60 s
ramp-up: 1 x 3 @ 70 kg, rest 90 s
sets: 4 x 5 @ 85 kg, rest 180 s, RIR 2
cue: Big breath and brace before every repetition
cue: Sit down between the heels
avoid: Knees falling in on the way up: push the floor apart instead
caution: Set the safety arms just below your lowest point. Back pain: stop.
say: Four sets of five with three minutes of rest. Breathe in at the top, brace, go down, and breathe out as you pass the hard part.
shot: Side, full, set 1, 20 s: depth and back
shot: Front, full, set 2, 15 s: knees
if taken: Front squat with dumbbells
[exercise overhead-press, clip 70] Overhead press
ramp-up: 1 x 8 @ 20 kg, rest 60 s
sets: 3 x 6 @ 35 kg, rest 2 min, RIR 2
cue: Squeeze the glutes, ribs down
cue: Head through at the top
avoid: Leaning back: take weight off instead
caution: Pinch at the top of the shoulder: use dumbbells or stop. Safety arms at chest height.
say: Six repetitions, two minutes of rest. Move your head out of the way, not the bar.
shot: Side, full, set 1, 15 s: bar path
shot: Front, medium, set 2, 12 s: wrists
if taken: Seated dumbbell press
[exercise chest-supported-row, clip 70] Chest-supported row
sets: 3 x 8-10 @ 24 kg each hand, rest 90 s, RIR 2
ramp-up: 1 x 8 @ 14 kg each hand, rest 60 s
cue: Drive the elbows towards the back pockets
avoid: Lifting the chest off the pad: end the set there instead
caution: Sharp pain at the front of the shoulder: stop or go lighter
say: Three sets of eight to ten. Rest ninety seconds, and keep the chest on the pad.
shot: Side, full, set 1, 15 s: arm path
if taken: Cable row
[exercise biceps-curl, clip 30] Curl
sets: 2 x 12 @ 10 kg each hand, rest 60 s
cue: Elbows stay by your sides
avoid: Swinging the back: take lighter bells instead
caution: Elbow pain: go lighter or stop
say: Two sets of twelve and you are done.
shot: Side, medium, set 1, 10 s: elbows still` + close, fields: facts(), planted: [] },
  { name: "upper and lower body with many slips", script: open("Heavy squats, then rows. Ask a professional first if you have a condition.") + warm + `
[exercise barbell-curl, clip 30] Curl
sets: 3 x 15 @ 20 kg, rest 60 s
cue: Elbows stay by your sides
avoid: Swinging the back
caution: Elbow pain: go lighter or stop
say: Fifteen slow ones, three times.
shot: Side, medium, set 1, 10 s: elbows still
[exercise back-squat, clip 90] Back squat
sets: 4 x 5 @ 85 kg, rest 45 s, RPE 8
cue: Brace before every repetition
avoid: Knees falling in on the way up: push the floor apart instead
caution: Set the safety arms just below your lowest point. Back pain: stop.
say: Four sets of five, and rest four minutes between them.
shot: Side, full, set 5, 20 s: depth and back
if taken: Front squat with dumbbells
[exercise bent-over-row, clip 70] Bent-over row
ramp-up: 1 x 8 @ 20 kg, rest 60 s
sets: 3 x 8 @ 45 kg, rest 90 s
cue: Elbows tucked
cue: Elbows out wide at the top
avoid: Standing up to finish: take weight off instead
caution: Back pain: use the chest-supported row or stop
say: Eight repetitions. Inhale on the way up and exhale on the way down.
shot: Side, full, set 1, 15 s: back shape
if taken: Cable row` + close, fields: facts({ carryOver: [{ exercise: "back-squat", sets: "2 x 5 @ 70 kg, rest 180 s", actuals: [], note: "" }] }), planted: ["exercise-order", "ramp-up-sets", "min-rest", "said-numbers", "max-load-jump", "max-set-jump", "shot-set", "no-contradictory-cues", "avoid-remedy"] },
  { name: "older adults at home", script: open("Strength for getting out of a chair. Ask your doctor first if you have had a fall or a heart condition.") + `
[warm-up, clip 60, minutes 7] Warm-up
cue: Two minutes of marching beside the kitchen counter
cue: Circles: ankles, knees, hips, shoulders, and a few turns for the upper back
say: Seven minutes. Keep one hand on the counter, and get warm enough to take off your jumper.
shot: Front, full, 20 s: marching with a hand on the counter
[exercise squat-to-box, clip 60] Sit to stand
sets: 2 x 8, tempo 3-1-1-0, rest 90 s
cue: Nose over toes, then stand
cue: Sit down slowly, three seconds
avoid: Dropping onto the chair: use your hands to help instead
caution: Knee pain or dizziness: stop and sit. The chair stands against a wall.
say: Two sets of eight. Take three seconds down. Use your hands as much as you need.
shot: Side, full, set 1, 15 s: nose over toes
shot: Front, full, set 2, 12 s: knees
[exercise step-up, clip 60] Step-up with a rail
sets: 2 x 6 each side, rest 90 s
cue: Whole foot on the step
cue: One hand on the rail
avoid: Pushing off the back foot: use a lower step instead
caution: Unsteady today: stay on the floor and march instead
say: Six on each side. Hold the rail, and swap legs after a rest.
shot: Side, full, set 1, 15 s: whole foot on the step
shot: Front, full, set 2, 12 s: hand on the rail
if taken: Marching on the spot
[exercise band-row, clip 50] Band row
sets: 2 x 12 @ band, rest 60 s
cue: Elbows past the ribs
avoid: Shrugging: step closer to the door instead
caution: Shoulder pain: use a lighter band or stop
say: Twelve easy pulls, twice. Breathe out as you pull.
shot: Side, medium, set 1, 12 s: elbows` + close, fields: facts({ audience: { level: "beginner", groups: ["older"] }, session: session({ place: "", slotMinutes: 60 }) }), planted: [] },
  { name: "older adults, with jumps and a last repetition", script: open("Strength for getting out of a chair. Ask your doctor first if you have had a fall or a heart condition.") + `
[warm-up, clip 30, minutes 3] Warm-up
cue: Two minutes of marching
say: Get warm.
shot: Front, full, 20 s: marching
[exercise squat-jump, clip 60] Squat jump
sets: 3 x 10, rest 60 s
cue: Land softly
avoid: Landing on straight legs: sink into the landing instead
caution: Knee pain: stop
say: Ten jumps, three times.
shot: Side, full, set 1, 15 s: landing
[exercise single-leg-romanian-deadlift, clip 60] One-leg hinge
sets: 3 x AMRAP each side @ 8 kg, rest 60 s
cue: Hips square to the floor
avoid: Turning out the hip: reach less far instead
caution: Back pain: stop
say: As many as you can on each side.
shot: Side, full, set 1, 15 s: flat back` + close, fields: facts({ audience: { level: "mixed", groups: ["older"] }, session: session({ place: "", slotMinutes: 60 }) }), planted: ["min-warm-up-minutes", "warm-up-joints", "audience-landings", "max-audience-effort", "balance-support"] },
  { name: "friendly to pregnancy", script: open("A calm session for the second and third trimester. Show this plan to your midwife or doctor first.") + `
[warm-up, clip 60, minutes 8] Warm-up
cue: Three minutes of easy walking, able to chat
cue: Circles: ankles, knees, hips, shoulders, elbows, upper back
say: Eight easy minutes. You should be able to talk in full sentences.
shot: Front, full, 20 s: circles
[exercise squat-to-box, clip 60] Box squat without weight
sets: 2 x 10, rest 90 s
cue: Feet as wide as feels good
cue: Breathe out as you stand
avoid: Holding the breath: count aloud instead
caution: Bleeding, dizziness, pain or contractions: stop and call your midwife or doctor
say: Ten easy ones. Breathe out as you stand up, and stop if you feel dizzy.
shot: Side, full, set 1, 15 s: sitting back
if taken: A chair
[exercise cable-row, clip 60] Seated row
sets: 2 x 12 @ 15 kg, rest 60 s, RIR 4
cue: Tall spine, elbows back
avoid: Leaning far back: take less weight instead
caution: Pain in the belly or pelvis: stop
say: Two sets of twelve, with at least four left in the tank.
shot: Side, full, set 1, 15 s: tall spine
if taken: Band row
[exercise side-plank, clip 40] Side plank from the knees
sets: 2 x 15 s each side, rest 45 s
cue: Long line from shoulder to knee
avoid: Sinking into the shoulder: push the floor away instead
caution: Doming of the belly or pelvic pain: leave it out
say: Fifteen seconds on each side, knees down. Keep breathing.
shot: Front, full, set 1, 12 s: long line` + close, fields: facts({ audience: { level: "mixed", groups: ["pregnant"] } }), planted: [] },
  { name: "pregnancy, on the back and too hard", script: open("A calm session. Show this plan to your midwife or doctor first.") + warm + `
[exercise glute-bridge, clip 60] Glute bridge
sets: 3 x 10, rest 60 s
cue: Hold your breath and lift
avoid: Arching the back: stop lower instead
caution: Pain: stop
say: Ten good ones.
shot: Side, full, set 1, 12 s: hips
[exercise goblet-squat, clip 60] Goblet squat
sets: 3 x 8 @ 20 kg, rest 90 s, RPE 9
cue: Whole foot on the floor
avoid: Heels lifting: use a small plate instead
caution: Pain or dizziness: stop
say: Eight hard ones.
shot: Side, full, set 1, 12 s: depth` + close, fields: facts({ audience: { level: "mixed", groups: ["pregnant"] } }), planted: ["audience-position", "max-audience-effort"] },
  { name: "one kettlebell", script: open("Twenty minutes with one bell. Ask a doctor first if your back or heart is a worry.") + warm + `
[exercise kettlebell-deadlift, clip 50] Kettlebell deadlift
sets: 2 x 8 @ 24 kg, rest 60 s
cue: Hips back, shins nearly upright
cue: Push the floor away
avoid: Squatting the bell up: send the hips back instead
caution: Back pain: use a lighter bell or raise it on a box
say: Eight slow ones, twice, to find the hinge.
shot: Side, full, set 1, 15 s: flat back
[exercise kettlebell-swing, clip 70] Swing
sets: EMOM 10 min, 12 reps @ 24 kg
cue: Snap the hips, arms like ropes
cue: Stand tall at the top, ribs over hips
avoid: Lifting with the arms: let the hips do it instead
caution: Clear two metres in front. Back pain: stop.
say: Twelve swings at the top of every minute, for ten minutes. The rest is what is left of the minute.
shot: Side, full, 20 s: hinge
shot: Front, full, 15 s: bell path
[exercise suitcase-carry, clip 40] Suitcase carry
sets: 3 x 30 m each side @ 24 kg, rest 60 s
cue: Stand tall, do not lean
avoid: Leaning away from the bell: take a lighter one instead
caution: Back pain or a slipping grip: put it down
say: Thirty metres on each side. Tall and quiet.
shot: Front, full, set 1, 15 s: level shoulders` + close, fields: facts(), planted: [] },
  { name: "jumps, too many, too late, too close", script: open("Jumps today. Ask a physio first if your knees are a worry.") + warm + `
[exercise back-squat, clip 60] Back squat
ramp-up: 2 x 5 @ 40 kg, rest 60 s
sets: 3 x 5 @ 80 kg, rest 150 s
cue: Brace and sit between the heels
avoid: Rising hips first: lower the weight instead
caution: Safety arms below the lowest point; stop if the back hurts
say: Three sets of five.
shot: Side, full, set 1, 15 s: depth
if taken: Goblet squat
[exercise box-jump, clip 60] Box jump
sets: 5 x 10, rest 30 s
cue: Land quietly with bent knees
avoid: Jumping down: step down instead
caution: Shin or knee pain: stop for today
say: Five sets of ten. Step down every time.
shot: Side, full, set 1, 15 s: landing
if taken: Squat jump
[exercise pogo-hop, clip 40] Pogo hop
sets: 4 x 20, rest 60 s
cue: Quick and quiet feet
avoid: Deep bends: stay on springs instead
caution: Achilles pain: leave it out
say: Twenty quick ones, four times.
shot: Side, full, set 1, 10 s: quick feet` + close, fields: facts(), planted: ["power-first", "max-jump-contacts", "min-jump-rest"] },
  { name: "a circuit", script: open("A circuit with no equipment but a mat. Ask a doctor first if you have a condition.") + warm + `
[exercise bodyweight-squat, clip 40] Squat
sets: A1 3 x 40 s, rest 20 s
cue: Chest proud, whole foot down
avoid: Knees falling in: push them out instead
caution: Knee pain: go less deep
say: Forty seconds of work, twenty of rest, and on to the next.
shot: Front, full, set 1, 15 s: knees
[exercise push-up, clip 40] Push-up
sets: A2 3 x 40 s, rest 20 s
cue: Straight line from head to heels
avoid: Hips sagging: put the knees down instead
caution: Wrist pain: use fists or handles
say: Knees down is a push-up too. Keep going at your own speed.
shot: Side, full, set 1, 15 s: straight line
[exercise mountain-climber, clip 40] Mountain climber
sets: A3 3 x 40 s, rest 60 s
cue: Hands under shoulders
avoid: Bouncing hips: slow down instead
caution: Wrist or back pain: stop
say: Slow is fine. One minute of rest, then the next round.
shot: Side, full, set 1, 15 s: flat back` + close, fields: facts({ audience: { level: "mixed", groups: [] } }), planted: [] },
  { name: "mobility only", script: `
[opening, clip 30, minutes 1] Opening
say: Fifteen minutes for stiff hips. Ask a physio first if you are in pain.
shot: Front, medium, 10 s: to camera
note: Filmed at home, no mirrors, nobody in frame.
[exercise cat-camel, clip 60] Cat-camel
sets: 1 x 10, rest 20 s
cue: Move slowly, breathe out as you round
avoid: Forcing the end: stay where it is easy instead
caution: Sharp pain: leave it out
say: Ten slow ones. Round as you breathe out, then let the belly sink as you breathe in.
shot: Side, full, 15 s: whole spine
[exercise hip-flexor-stretch, clip 60] Hip flexor stretch
sets: 2 x 30 s each side, rest 15 s
cue: Tuck the tail, then lean forward
avoid: Arching the low back: squeeze the glute instead
caution: Knee pain: put a pad under it
say: Thirty seconds on each side, twice. Swap legs when the bell goes.
shot: Side, full, 15 s: hips
[exercise figure-four-stretch, clip 60] Figure four
sets: 2 x 30 s each side, rest 15 s
cue: Flex the ankle, knee away from you
avoid: Pulling on the knee: pull behind the thigh instead
caution: Pain in the knee: stop
say: On your back, ankle over the knee. Thirty seconds on each side.
shot: Side, full, 15 s: legs
[closing, clip 20, minutes 1] Closing
say: That was it. If something hurts, ask a doctor or a physio who can look at you.
shot: Front, medium, 12 s: goodbye`, fields: facts({ session: session({ place: "", slotMinutes: 30, kit: ["Phone"] }), audience: { level: "beginner", groups: [] } }), planted: [] },
  { name: "bench day with a training partner and a sponsor", script: open("Bench day with my training partner. Ad: Fernhill Oats pays for this episode. Ask a doctor first if you have a condition.") + warm + `
[exercise bench-press, clip 90] Bench press
ramp-up: 1 x 10 @ 20 kg, rest 60 s
ramp-up: 1 x 5 @ 45 kg, rest 60 s
ramp-up: 1 x 3 @ 60 kg, rest 90 s
sets: 5 x 3 @ 85 %1RM, rest 3 min, RPE 8
cue: Shoulder blades back and down
cue: Touch lightly, pause, press
avoid: Bouncing off the chest: take weight off instead
caution: A spotter at the head, or safety arms level with your chest
say: Five sets of three, three minutes of rest. Somebody stands behind me for every set.
shot: Side, full, set 1, 20 s: bar path
shot: Three-quarter, medium, set 2, 15 s: touch and pause
if taken: Dumbbell bench press
[exercise dumbbell-bench-press, clip 50] Dumbbell press
sets: 3 x 10 @ 24 kg each hand, rest 90 s, RIR 2
cue: Forearms upright
avoid: Dropping the bells at the end: sit up with them on the thighs instead
caution: Shoulder pain: lower the bells less far. Have somebody hand them to you.
say: Three sets of ten, ninety seconds of rest.
shot: Side, full, set 1, 15 s: forearms
if taken: Push-up
[exercise triceps-pushdown, clip 30] Pushdown
sets: 3 x 12 @ 20 kg, rest 60 s
cue: Elbows by your sides
avoid: Leaning over it: step back instead
caution: Elbow pain: go lighter
say: Three sets of twelve to finish.
shot: Side, medium, set 1, 10 s: elbows
if taken: Band pushdown` + close, fields: facts({ session: session({ alone: false }), partners: [{ id: "p", name: "Fernhill Oats", relation: "paid", disclosure: "Ad: Fernhill Oats pays for this episode." }] }), planted: [] },
  { name: "bench day alone, sponsor mentioned late", script: open("Bench day. Ask a doctor first if you have a condition.") + warm + `
[exercise bench-press, clip 90] Bench press
ramp-up: 1 x 10 @ 20 kg, rest 60 s
sets: 3 x 8 @ 95 %1RM, rest 3 min, RPE 9.5
cue: Shoulder blades back and down
cue: Flare your elbows all the way out
avoid: Bouncing off the chest: take weight off instead
caution: Shoulder pain: stop
say: Three sets of eight. The bar alone is forty-five pounds. Bounce it off your chest if you get stuck.
shot: Side, full, set 1, 20 s: bar path
if taken: Dumbbell bench press
[talk, clip 30] A word on breakfast
say: Ad: Fernhill Oats pays for this episode.
shot: Front, medium, 10 s: to camera` + close, fields: facts({ publish: { date: "2027-03-02", time: "12:00", zone: "Etc/UTC" }, session: session({ date: "2027-03-01" }), partners: [{ id: "p", name: "Fernhill Oats", relation: "paid", disclosure: "" }] }), planted: ["no-failure-alone", "partner-disclosure", "min-days-to-publish", "one-unit-said", "reps-at-percent", "no-contradictory-cues"] },
  { name: "teenagers in a school gym", script: open("Learn the squat and the row. Train with a teacher or coach beside you.") + warm + fullBody("3 x 10 @ 12 kg, rest 90 s") + close, fields: facts({ audience: { level: "beginner", groups: ["teen"] }, session: session({ place: "School gym", alone: false }) }), planted: [] },
  { name: "teenagers, too heavy", script: open("Learn the squat. Train with a teacher or coach beside you.") + warm + `
[exercise back-squat, clip 60] Back squat
ramp-up: 2 x 5 @ 40 kg, rest 60 s
sets: 4 x 2 @ 90 %1RM, rest 3 min
cue: Brace, then sit down
avoid: Knees in: push the floor apart instead
caution: Safety arms on, teacher beside the rack
say: Four sets of two. No excuses, fatty.
shot: Side, full, set 1, 15 s: depth
if taken: Goblet squat` + close, fields: facts({ audience: { level: "beginner", groups: ["teen"] }, session: session({ place: "School gym", alone: false }) }), planted: ["max-teen-load"] },
  { name: "three blocks", script: `
[opening, clip 20] Hello
say: One exercise, done well. Ask a doctor or a coach first if you have a condition.
shot: Front, medium, 10 s: to camera
[exercise farmers-carry, clip 60] Farmer's carry
sets: 3 x 30 m @ 20 kg each hand, rest 60 s
cue: Stand tall
avoid: Leaning: put the bells down instead
caution: Back pain: stop
say: Thirty metres, three times.
shot: Front, full, set 1, 15 s: posture
[closing, clip 15] Bye
say: That was it.
shot: Front, medium, 10 s: bye`, fields: facts({ session: session({ slotMinutes: 30 }) }), planted: ["warm-up", "cool-down"] },
  SIXTY,
];
