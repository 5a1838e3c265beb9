import { defineRule } from "../../define-rule";
import { readCue, type CueLabelName } from "../../language";

/** What a title can promise or do that it should not; what only a cue can ask for is left out. */
const CLAIMS: readonly CueLabelName[] = ["claim-spot-reduction", "claim-guarantee", "claim-medical", "diet-extreme", "shame", "pain-push"];

export const noClaimInTitle = defineRule({
  meta: {
    id: "no-claim-in-title", version: 1, subject: "publishing", level: "fix", moment: "before publishing",
    summary: "The title promises nothing that training cannot keep, and puts nobody down.",
    why: "The title is the claim most people read, many without ever pressing play. It stands on the handout too.",
    source: { title: "CAP (UK) advice on weight control claims, Code section 13; FTC Gut Check for media, 2014, as a list of red flags" },
    messages: { claim: "The title says \"{words}\": {ruling} Say what it trains." },
  },
  check({ episode }, _options, report) {
    const text = episode.title.trim();
    if (text === "") return;
    const [found] = readCue({ text, family: "general", slot: "description", audience: "general", exercise: null }).filter(({ label }) => CLAIMS.includes(label));
    if (!found) return;
    const ruling = `${found.ruling.charAt(0).toLowerCase()}${found.ruling.slice(1)}`;
    // A likeness is no more than worth a thought, wherever it is heard.
    report({ words: text, message: "claim", ...(found.by === "likeness" ? { level: "consider" as const } : {}), data: { words: text.slice(found.start, found.end), ruling: /[.!?]$/.test(ruling) ? ruling : `${ruling}.` } });
  },
});
