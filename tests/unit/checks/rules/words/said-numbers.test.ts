import { saidNumbers } from "../../../../../shared/checks/rules/words/said-numbers";
import { ruleTest } from "../../rule-test";

ruleTest(saidNumbers, {
  valid: [
    `[exercise goblet-squat] Goblet squat
     sets: 3 x 8-10 @ 20 kg, tempo 3-1-1-0, rest 90 s
     say: Three sets of eight to ten at twenty kilos, three seconds down. Rest ninety seconds.`,
    { name: "numbers about other days", script: `[exercise goblet-squat] Goblet squat
      sets: 3 x 10 @ 20 kg
      say: Last week it was four sets of eight with sixteen kilos.` },
    { name: "a part of the set", script: `[exercise goblet-squat] Goblet squat
      sets: 3 x 10
      say: The last two reps should slow down on their own.` },
    { name: "a ramp-up set has its own numbers", script: `[exercise back-squat] Squat
      ramp-up: 1 x 8 @ 40 kg
      sets: 3 x 5 @ 80 kg
      say: One set of eight at forty kilos, then three sets of five.` },
    { name: "no set line to differ from", script: `[exercise goblet-squat] Goblet squat
      say: Three sets of ten.` },
    { name: "both bells together", script: `[exercise farmers-carry] Carry
      sets: 4 x 40 m @ 24 kg each hand
      say: That is forty-eight kilos in all, forty metres, four sets.` },
    { name: "reserve and effort that agree", script: `[exercise back-squat] Squat
      sets: 3 x 5 @ 80 %1RM, RPE 8
      say: Two reps in reserve at eighty percent, RPE 8. The last two reps are slow.` },
    { name: "what the set line leaves open", script: `[exercise goblet-squat] Goblet squat
      sets: 3 x 10
      say: Rest for ninety seconds with twenty kilos beside you.` },
  ],
  invalid: [
    {
      name: "a cue",
      script: `[exercise side-plank] Side plank
        sets: 2 x 20 s each side
        cue: Thirty seconds each side`,
      errors: [{ message: "cueDiffers", at: "Thirty", says: "Side plank: a cue says Thirty for seconds, the set line says 20. Change one of them.", remedies: 1 }],
    },
    {
      name: "reserve, effort and percentage",
      script: `[exercise back-squat] Squat
        sets: 3 x 5 @ 80 %1RM, RIR 2
        say: At seventy-five percent, with one left in the tank. That is RPE 9.`,
      errors: [{ message: "differs", at: "seventy-five", remedies: 1 }, { message: "differs", at: "one", remedies: 1 }, { message: "differs", at: "9", remedies: 1 }],
    },
    {
      name: "in figures with a sign, and minutes",
      script: `[exercise kettlebell-swing] Swing
        sets: EMOM 10 min, 12 reps @ 24 kg
        say: Twelve every minute for eight minutes. No, not 3 x 10.`,
      errors: [{ message: "differs", at: "eight", remedies: 1 }, { message: "differs", at: "10", remedies: 1 }],
    },
    {
      script: `[exercise goblet-squat] Goblet squat
        sets: 3 x 10 @ 20 kg
        say: Four sets of ten.`,
      errors: [{ message: "differs", at: "Four", says: "Goblet squat: the voiceover says Four for sets, the set line says 3. Change one of them.", remedies: 1 }],
    },
    {
      name: "repetitions outside the range, in figures",
      script: `[exercise goblet-squat] Goblet squat
        sets: 3 x 8-10
        say: Do 12 reps.`,
      errors: [{ message: "differs", at: "12", says: "Goblet squat: the voiceover says 12 for repetitions, the set line says 8 to 10. Change one of them.", remedies: 0 }],
    },
    {
      name: "load and rest",
      script: `[exercise goblet-squat] Goblet squat
        sets: 3 x 10 @ 20 kg, rest 90 s
        say: Take twenty-four kilos and rest two minutes.`,
      errors: [{ message: "differs", at: "twenty-four", remedies: 1 }, { message: "differs", at: "two", remedies: 1 }],
    },
    {
      name: "tempo and each side",
      script: `[exercise step-up] Step-up
        sets: 3 x 8 each side, tempo 3-1-1-0
        say: Ten on each side, two seconds down.`,
      errors: [{ message: "differs", at: "Ten", remedies: 1 }, { message: "differs", at: "two", remedies: 1 }],
    },
  ],
});
