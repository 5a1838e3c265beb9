import { disclosureText } from "../../../../../shared/checks/rules/publishing/disclosure-text";
import type { Episode } from "../../../../../shared/episode";
import { ruleTest } from "../../rule-test";

const writing = (disclosure: string): Partial<Episode> => ({ partners: [{ id: "p", name: "Fernhill Oats", relation: "gifted", disclosure }] });

ruleTest(disclosureText, {
  valid: [
    "[opening] Opening",
    { name: "plain and named", script: "", fields: writing("Ad: Fernhill Oats sent Odalys free oats.") },
    { name: "left to the documents", script: "", fields: writing(" ") },
  ],
  invalid: [
    { name: "a word regulators find unclear", script: "", fields: writing("Thanks to Fernhill Oats!"), errors: [{ message: "unclear", level: "stop", at: "Thanks to Fernhill Oats!", says: "Fernhill Oats: the written disclosure \"Thanks to Fernhill Oats!\" has no plain word. Begin it with \"Ad:\".", remedies: 1 }] },
    { name: "an ad for whom", script: "", fields: writing("This is an ad."), errors: [{ message: "nameless", says: "Fernhill Oats: the written disclosure \"This is an ad.\" does not name the partner. Name it.", remedies: 1 }] },
  ],
});
