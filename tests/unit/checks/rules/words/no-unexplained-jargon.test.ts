import { noUnexplainedJargon } from "../../../../../shared/checks/rules/words/no-unexplained-jargon";
import { ruleTest } from "../../rule-test";

ruleTest(noUnexplainedJargon, {
  valid: [
    `[exercise goblet-squat] Goblet squat
     sets: 3 x 10 @ 20 kg, rest 90 s`,
    { name: "explained in another block", script: `[exercise goblet-squat] Goblet squat
      sets: 3 x 10, RIR 2
      [talk] Words
      say: Stop when you could still do two more; that is two in reserve.` },
    { name: "viewers who know the words", script: `[exercise goblet-squat] Goblet squat
      sets: 3 x AMRAP`, fields: { audience: { level: "advanced", groups: [] } } },
    { name: "tempo figures with their seconds said", script: `[exercise goblet-squat] Goblet squat
      sets: 3 x 10, tempo 3-1-1-0
      say: Three seconds down on every one.` },
  ],
  invalid: [
    {
      script: `[exercise goblet-squat] Goblet squat
        sets: 3 x 10, RIR 2`,
      errors: [{ message: "unexplained", at: "RIR 2", says: "Goblet squat: \"RIR\" is used and nowhere explained, and beginners watch. Say once what it means.", remedies: 1 }],
    },
    {
      name: "several words, each once",
      script: `[exercise goblet-squat] Goblet squat
        sets: 3 x 10, tempo 3-1-1-0, RPE 8
        say: As a superset with the row. Another superset next week.
        [exercise push-up] Push-up
        sets: 1 x AMRAP`,
      errors: [
        { message: "unexplained", at: "RPE 8", remedies: 1 }, { message: "unexplained", at: "AMRAP", remedies: 1 },
        { message: "unexplained", at: "tempo 3-1-1-0", remedies: 1 }, { message: "unexplained", at: "superset", remedies: 1 },
      ],
    },
    {
      name: "small letters, and a tempo without strokes, in the set line alone",
      script: `[exercise goblet-squat] Goblet squat
        sets: 3 x 10, tempo 30X1, rir 1`,
      errors: [{ message: "unexplained", at: "rir 1", remedies: 1 }, { message: "unexplained", at: "tempo 30X1", remedies: 1 }],
    },
    {
      name: "words of the trade, spoken",
      script: `[talk] Talk
        say: Full ROM, isometric and unilateral work for the posterior chain; hypertrophy follows, DOMS too, then a deload.`,
      errors: ["isometric", "unilateral", "posterior chain", "deload", "hypertrophy", "ROM", "DOMS"].map((at) => ({ message: "unexplained", at, remedies: 1 })),
    },
  ],
});
