import { episodeName, seriesName, type Episode, type Partner, type Units } from "../../episode";
import type { EpisodeClocks } from "../../clocks";
import { columns, field, heading, keepTogether, keyValues, label, paragraph, type Paper, type PaperNode } from "../paper";
import { detailsOf, wordsOf } from "./details";
import { planOf, planTable, unreadNotes, type PlanItem } from "./plan";
import { beforeYouStart, spotted, stopSigns } from "./safety";
import { ROOMY, type Spacing } from "./spacing";
import { termsUsed } from "./terms";

/** A foot of more characters would take more than two lines. */
const MAX_FOOT = 190;

const RELATION_WORDS: Readonly<Record<Partner["relation"], (name: string) => string>> = {
  paid: (name) => `Ad: ${name} paid for a part of this video.`,
  gifted: (name) => `Ad: ${name} gave products for this video.`,
  affiliate: (name) => `Ad: links to ${name} earn a commission.`,
  "own brand": (name) => `Ad: ${name} is the coach's own brand.`,
};

/** What viewers must know about partners: the coach's words, or plain ones where none were written. */
export const disclosureOf = ({ name, relation, disclosure }: Partner): string => disclosure.trim() || RELATION_WORDS[relation](name.trim() || "A partner");

/** Minutes a viewer needs: the plan's parts without the moves of the camera, to the nearest five. */
function viewerMinutes(items: readonly PlanItem[], clocks: EpisodeClocks): number {
  const ids = new Set(items.map((item) => item.block.id));
  const seconds = clocks.gym.blocks.filter((block) => ids.has(block.block)).flatMap((block) => block.parts).filter((part) => part.label !== "camera moves").reduce((sum, part) => sum + part.seconds, 0);
  return seconds === 0 ? 0 : Math.max(5, Math.round(seconds / 300) * 5);
}

/** "Strong for the Trail, episode 7, with Odalys Brandt. About 65 minutes in a gym." */
function subtitle(episode: Episode, minutes: number): string {
  const series = seriesName(episode);
  const coach = episode.series.coach.trim();
  const who = [series, coach ? `${series ? "with" : "With"} ${coach}` : ""].filter(Boolean).join(", ");
  return [who ? `${who}.` : "", minutes > 0 ? `About ${minutes} minutes in a gym.` : ""].filter(Boolean).join(" ");
}

function yourNotes({ notes: height }: Spacing): PaperNode {
  return keepTogether([
    heading(2, "Your notes"),
    columns([
      { width: 1, children: [label("date"), field({ type: "text", name: "date", tip: "Date of your session", width: null, height: 22 })] },
      { width: 2, children: [label("place, sleep, how it felt"), field({ type: "text", name: "felt", tip: "Place, sleep, how it felt", width: null, height: 22 })] },
    ]),
    label("what to keep and what to change next time"),
    field({ type: "text", name: "notes", tip: "Notes: what to keep and what to change next time", width: null, height, multiline: true }),
  ]);
}

/** The plan and what belongs to it; a sentence in its place while there is none. */
function planNodes(items: readonly PlanItem[], units: Units, spacing: Spacing): PaperNode[] {
  if (items.length === 0) {
    return [heading(2, "The plan"), paragraph("There is no plan in this episode yet. Its warm-up, exercises and cool-down will stand here, with room for your own numbers."), stopSigns(spacing)];
  }
  const schemes = items.flatMap((item) => [...item.rampUp, ...item.working]).flatMap((dose) => (dose.scheme ? [dose.scheme] : []));
  const terms = termsUsed(schemes, items.some((item) => item.rampUp.length > 0), wordsOf(items));
  return [
    planTable(items, units, spacing),
    stopSigns(spacing),
    ...detailsOf(items, spacing),
    ...(terms.length === 0 ? [] : [keepTogether([heading(2, "Words used here"), keyValues(terms, { keyWidth: 150, size: spacing.text })])]),
    yourNotes(spacing),
    paragraph("Write down what you lifted. Your next session starts from your own numbers, not from the video's.", { weight: "semibold" }),
  ];
}

/** The viewer's handout as a paper, with notes for the coach. */
export function handoutPaper(episode: Episode, clocks: EpisodeClocks, units: Units, spacing: Spacing = ROOMY): { readonly paper: Paper; readonly notes: readonly string[] } {
  const items = planOf(episode);
  const disclosures = [...new Set(episode.partners.map(disclosureOf))];
  const together = disclosures.join(" ");
  const line = subtitle(episode, viewerMinutes(items, clocks));
  const talk = episode.blocks.filter((block) => !items.some((item) => item.block === block));
  const cautions = talk.flatMap((block) => block.lines.filter((each) => each.kind === "caution" && each.text.trim() !== "").map((each) => each.text.trim()));
  const children: PaperNode[] = [
    heading(1, episodeName(episode)),
    ...(line ? [paragraph(line, { size: 12.5, grey: true, after: 6 })] : []),
    ...disclosures.map((text) => paragraph(text, { weight: "semibold", after: 2 })),
    beforeYouStart(episode, spotted(items), spacing),
    ...(cautions.length > 0 ? [label("take care"), ...cautions.map((text) => paragraph(text))] : []),
    ...planNodes(items, units, spacing),
  ];
  const paper: Paper = {
    title: `${episodeName(episode)}: plan to take along`,
    author: episode.series.coach.trim(),
    subject: "Workout plan with room for your own numbers",
    language: "en-GB",
    foot: together.length > MAX_FOOT ? "Ad: this video has partners; page 1 names them." : together || "General plan, not made for you. Ask a doctor or a qualified coach when in doubt.",
    sections: [{ startsPage: true, head: null, children }],
  };
  return { paper, notes: unreadNotes(items) };
}

