import { partnerDisclosure } from "../../../../../shared/checks/rules/publishing/partner-disclosure";
import { ruleTest } from "../../rule-test";

ruleTest(partnerDisclosure, {
  valid: [
    "[opening] Opening",
    { name: "said plainly in the opening", script: `[opening] Opening
      say: Ad: Fernhill Oats sent me oats.`, fields: { partners: [{ id: "p", name: "Fernhill Oats", relation: "gifted", disclosure: "" }] } },
    { name: "paid, in other plain words", script: `[opening] Opening
      say: This episode is paid for by Fernhill Oats.`, fields: { partners: [{ id: "p", name: "Fernhill Oats", relation: "paid", disclosure: "" }] } },
    { name: "a partner without a name yet", script: "[talk] Questions", fields: { partners: [{ id: "p", name: " ", relation: "paid", disclosure: "" }] } },
  ],
  invalid: [
    {
      name: "said in the description only",
      script: `[opening] Opening
        say: Hello.`,
      fields: { partners: [{ id: "p", name: "Fernhill Oats", relation: "gifted", disclosure: "Ad: Fernhill Oats sent Odalys free oats." }] },
      errors: [{ message: "missing", level: "stop", says: "Fernhill Oats is a partner (gifted), and no spoken line says so. Say it in the opening, with a plain word such as \"ad\".", remedies: 1 }],
    },
    {
      name: "an episode with no block yet",
      script: "",
      fields: { partners: [{ id: "p", name: "Fernhill Oats", relation: "affiliate", disclosure: "" }] },
      errors: [{ message: "missing", remedies: 1 }],
    },
    {
      name: "a weak word alone",
      script: `[opening] Opening
        say: Gifted by Fernhill Oats, thank you.`,
      fields: { partners: [{ id: "p", name: "Fernhill Oats", relation: "gifted", disclosure: "" }] },
      errors: [{ message: "weak", at: "Gifted by Fernhill Oats, thank you.", remedies: 1 }],
    },
    {
      name: "disclosed after the first mention",
      script: `[opening] Opening
        say: I had Fernhill Oats this morning.
        [closing] Closing
        say: Ad: Fernhill Oats paid for this.`,
      fields: { partners: [{ id: "p", name: "Fernhill Oats", relation: "paid", disclosure: "" }] },
      errors: [{ message: "late", level: "stop", at: "I had Fernhill Oats this morning.", remedies: 1 }],
    },
    {
      name: "disclosed after the first mention, in the same block",
      script: `[opening] Opening
        say: I had Fernhill Oats this morning.
        say: Ad: Fernhill Oats paid for this.`,
      fields: { partners: [{ id: "p", name: "Fernhill Oats", relation: "paid", disclosure: "" }] },
      errors: [{ message: "late", level: "stop", remedies: 1 }],
    },
    {
      name: "disclosed with the first mention, but deep in the episode",
      script: `[opening] Opening
        say: Hello.
        [exercise goblet-squat] Squat
        [talk] Breakfast
        say: Ad: Fernhill Oats paid for this.`,
      fields: { partners: [{ id: "p", name: "Fernhill Oats", relation: "paid", disclosure: "" }] },
      errors: [{ message: "deep", level: "fix", says: "Fernhill Oats is disclosed only in Breakfast, block 3 of 3. Say it in the opening, before anybody has left.", remedies: 1 }],
    },
  ],
});
