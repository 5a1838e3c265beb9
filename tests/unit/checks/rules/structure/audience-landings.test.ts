import { audienceLandings } from "../../../../../shared/checks/rules/structure/audience-landings";
import type { Episode } from "../../../../../shared/episode";
import { ruleTest } from "../../rule-test";

const watchedBy = (...groups: Episode["audience"]["groups"]): Partial<Episode> => ({ audience: { level: "mixed", groups } });

ruleTest(audienceLandings, {
  valid: [
    "[exercise squat-jump] Jump",
    { name: "a slam leaves the ball, not the feet", script: "[exercise medicine-ball-slam] Slam", fields: watchedBy("older") },
    { name: "a version on the floor is offered", script: "[exercise pogo-hop] Hops\nsay: Or do calf raises with your feet on the floor.", fields: watchedBy("postnatal") },
    { name: "a version on the floor stands by", script: "[exercise pogo-hop] Hops\nif taken: March on the spot", fields: watchedBy("older") },
  ],
  invalid: [
    { script: "[exercise squat-jump] Jump", fields: watchedBy("older"), errors: [{ message: "older", level: "consider", says: "Jump leaves the floor, and the episode addresses older viewers. Offer a version with the feet on the floor.", remedies: 1 }] },
    { script: "[exercise box-jump] Jump", fields: watchedBy("pregnant", "older"), errors: [{ message: "pregnant", level: "fix", remedies: 1 }] },
    { script: "[exercise tuck-jump] Jump", fields: watchedBy("postnatal"), errors: [{ message: "postnatal", level: "fix", remedies: 1 }] },
  ],
});
