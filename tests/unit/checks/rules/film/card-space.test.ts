import { cardSpace } from "../../../../../shared/checks/rules/film/card-space";
import type { Episode } from "../../../../../shared/episode";
import { ruleTest } from "../../rule-test";

const kit = (...items: string[]): Partial<Episode> => ({ session: { place: "", date: null, time: null, slotMinutes: 60, kit: items, units: "kg", alone: true, cameras: 1 } });
const script = `[exercise goblet-squat] Goblet squat
  ${"shot: Side, full, sets 1-3, 15 s: depth\n  ".repeat(6)}`;

ruleTest(cardSpace, {
  valid: [
    { name: "no space named", script, fields: kit("Phone") },
    { name: "space enough", script, fields: kit("Phone, 0.064 TB free") },
    { name: "two cards together", script, fields: kit("0,5 GB card", "1 GB card") },
  ],
  invalid: [{ name: "too small", script, fields: kit("Phone", "1 GB card"), errors: [{ message: "small", at: "1 GB", says: "About 13 min of recording need 1.2 GB, and the kit has 1 GB. Clear or pack more." }] }],
});
