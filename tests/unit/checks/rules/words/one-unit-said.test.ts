import { oneUnitSaid } from "../../../../../shared/checks/rules/words/one-unit-said";
import type { Episode } from "../../../../../shared/episode";
import { ruleTest } from "../../rule-test";

const inPounds: Partial<Episode> = { session: { place: "", date: null, time: null, slotMinutes: 60, kit: [], units: "lb", alone: true, cameras: 1 } };

ruleTest(oneUnitSaid, {
  valid: [
    "[exercise bench-press] Bench press\nsay: The bar alone is twenty kilos.",
    { name: "both in one sentence", script: "[exercise bench-press] Bench press\nsay: The bar alone is forty-five pounds, about twenty kilos." },
    { name: "pounds where the session counts in pounds", script: "[exercise bench-press] Bench press\nsay: Take 45 pounds.", fields: inPounds },
    { name: "no number", script: "[exercise bench-press] Bench press\nsay: A few pounds are plenty." },
  ],
  invalid: [
    { script: "[exercise bench-press] Bench press\nsay: The bar alone is forty-five pounds. Ten kilos a side come on top.", errors: [{ message: "other", at: "forty-five pounds", says: "Bench press: \"forty-five pounds\" is said in pounds, and the session counts in kilograms. Say it in kilograms, or in both." }] },
    { script: "[talk] Talk\nsay: Start with 10 kg.", fields: inPounds, errors: [{ message: "other", at: "10 kg" }] },
  ],
});
