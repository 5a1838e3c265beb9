import type { LabelReader } from "../types";

/** Knees or elbows are slammed into the end of their range, or the load is parked there. */
export const jointLockout: LabelReader = {
  label: "joint-lockout",
  ruling: "A knee or elbow is sent hard into its end, or the load is parked on a joint that was forced straight.",
  patterns: [
    { find: "<slam> ~3 <joint> ~3 <straight>", not: ["kettlebell-swing"], family: "leg-machine", example: "Snap the knees straight at the top." },
    { find: "<slam> ~2 <hinge_joint>", not: ["kettlebell-swing", "mobility-warmup"], with: "end|lock*|straight|hard|top|bottom|out|stop|back|finish", family: "arm-isolation", example: "Slam the elbows out hard." },
    { find: "<slam> ~3 into|to ~2 lockout|lock-out|lock_out|locked", family: "horizontal-press", example: "Smash it into lockout so everyone hears it." },
    { find: "<hinge_joint> ~1 click+|snap+|bang+|slam+|clunk+|crack+|jam+|clack+ ~2 straight|open|shut|back|at|together|out|into|home", not: ["kettlebell-swing", "mobility-warmup"], family: "overhead-press", example: "Throw it up until the elbows crack at the top." },
    { find: "lock ~3 <joint> ~2 hard|fully|violently|tight|backwards|and_hold|and_hang|and_rest|and_stay|dead|until|completely|as_hard", not: ["overhead-press"], family: "leg-machine", example: "Lock the knees hard between reps." },
    { find: "lock and hyperextend|slam|snap|jam ~2 <joint>", family: "horizontal-press", example: "Lock and jam the elbows on each push-up." },
    { find: "lock <your> ~1 knee%|legs", only: ["squat", "hinge", "leg-machine", "lunge-step", "kettlebell-swing", "plyometric"], without: "don't|soft*|gently|without", family: "hinge", example: "Lock your knees and bend down to the bar." },
    { find: "<let> <your> ~1 <hinge_joint> ~1 lock|snap|slam|bang|crash", without: "soft*|gently|slowly", not: ["kettlebell-swing", "mobility-warmup"], family: "leg-machine", example: "Let your knees lock with a bang." },
    { find: "hard|violent|vicious|crunching|snapping|loud|brutal|sharp <hinge_joint>? lockout|lock-out", family: "vertical-pull", example: "Finish with a hard elbow lockout." },
    { find: "hyperextend+ ~2 <joint>", family: "horizontal-press", example: "Hyperextend the elbows for a full finish." },
    { find: "rest|resting|hang|hanging|park|parked|sit|sitting|dump|lean|stack ~4 locked|straight|locked-out|straightened <joint>", only: ["leg-machine", "squat"], family: "leg-machine", example: "Rest the sled on locked knees between reps." },
    { find: "land|landing|touch_down|come_down|absorb_it ~4 straight-legged|stiff-legged|stiff_legged|straight_legged|stiff_legs|straight_legs|locked_legs|locked_knees|straight_knees|stiff_knees|legs_straight|knees_locked|legs_stiff|knees_straight", only: ["plyometric", "lunge-step", "general"], family: "plyometric", example: "Land with straight legs so it makes a noise." },
    { find: "stiff|straight|locked|rigid legs|knees ~3 landing|landings|land|lands|touchdown|impact", only: ["plyometric"], family: "plyometric", example: "Rigid legs on every landing." },
    { find: "straight-legged|stiff-legged ~8 land|lands|landing|landings", only: ["plyometric"], family: "plyometric", example: "Stiff-legged is how we land here." },
    { find: "drop|fall|crash|plummet ~4 into ~3 lockout|straight_arms|elbows", only: ["vertical-pull", "arm-isolation"], family: "vertical-pull", example: "Drop into straight arms at the bottom." },
    { find: "until|till the joint|knee%|elbow% stop+|hit+|click+|bite+|bang+", not: ["mobility-warmup", "cooldown-stretch"], family: "arm-isolation", example: "Throw it down until the elbow stops you." },
    { find: "<let> ~2 joint|knees|elbows ~2 be|take|catch|stop|do ~2 brake|load|weight|stop|it|job|work", family: "leg-machine", example: "Let the joint be the brake." },
  ],
  habits: [
    { find: "soft|bent knee%|elbow%|landing%", family: "plyometric", example: "Forget about soft knees when you come down." },
  ],
  silent: [
    { text: "Finish with long arms, softly.", family: "overhead-press" },
    { text: "Don't snap your knees straight.", family: "leg-machine" },
    { text: "Check that the collars are locked.", family: "horizontal-press" },
    { text: "Snap the hips, float the bell.", family: "kettlebell-swing" },
    { text: "Stop just short of locking the knees.", family: "leg-machine" },
    { text: "Press to lockout and pause.", family: "overhead-press" },
  ],
};
