import type { Block, Episode } from "../../episode";
import { exerciseById } from "../../exercises";
import { box, list, paragraph, columns, heading, keepTogether, type PaperNode } from "../paper";
import type { Spacing } from "./spacing";

/**
 * Who should ask first: people with heart, lung, kidney or metabolic disease or signs of it, and people who do not train regularly,
 * follow the pre-participation logic of Riebe et al., Med Sci Sports Exerc 47(11):2473-2479, 2015; the words are our own.
 */
const ASK_FIRST =
  "This plan is general and was not made for you. Ask a doctor first if you have a heart, lung, kidney, blood sugar or joint condition, " +
  "are pregnant or gave birth in the last months, get chest pain or dizzy spells, or have not trained for a while. " +
  "If a movement is new to you, let a qualified coach show it to you.";
const START_LIGHT =
  "Start lighter than in the video, and add weight only when the last rep looks like the first. Stop for sharp pain, dizziness or a tight chest. The rules of your gym come first.";

const GROUP_ADVICE: Readonly<Record<Episode["audience"]["groups"][number], string>> = {
  teen: "Under 18: train with an adult beside you who knows these movements.",
  older: "If your balance is not what it was: keep something steady within reach.",
  pregnant: "Pregnant: show this plan to your midwife or doctor before the first session.",
  postnatal: "After a birth: wait until your midwife or doctor has said yes to training.",
  returning: "Back after a break: begin well below what you used to lift.",
};

/** "the bench press", "the bench press and the back squat" */
function named(names: readonly string[]): string {
  const last = names.at(-1) ?? "";
  return names.length < 2 ? last : `${names.slice(0, -1).join(", ")} and ${last}`;
}

/** Exercises of the plan that can pin the lifter when a rep fails, named as the plan names them. */
export function spotted(blocks: readonly { readonly block: Block; readonly name: string }[]): string[] {
  const names = blocks.filter(({ block }) => block.exercise !== null && exerciseById(block.exercise)?.needsSpotter).map(({ name }) => name);
  return [...new Set(names)];
}

/** The caution at the top. @param names - exercises that need a spotter or safety arms */
export function beforeYouStart(episode: Episode, names: readonly string[], { text: size }: Spacing): PaperNode {
  const bar = names.length === 0 ? "" : ` For ${named(names)}: set the safety arms just below your lowest point, or have somebody spot you who knows how. With neither, leave ${names.length === 1 ? "it" : "them"} out.`;
  const groups = episode.audience.groups.map((group) => GROUP_ADVICE[group]).join(" ");
  return box("bar", [
    paragraph([{ text: "Before you start. ", weight: "semibold" }, { text: ASK_FIRST }], { size, after: 3 }),
    paragraph([{ text: START_LIGHT }, { text: bar, weight: "semibold" }], { size, after: groups ? 3 : 0 }),
    ...(groups ? [paragraph(groups, { size, after: 0 })] : []),
  ]);
}

/** Signs to stop at. Common to the patient pages of several hospitals; our own words. No emergency number: it differs by country. */
const STOP_SIGNS: readonly (readonly string[])[] = [
  [
    "pain, pressure or tightness in the chest, or pain in the neck, jaw, arm or between the shoulder blades",
    "dizziness, feeling faint, a cold sweat or sickness",
    "breath so short that you cannot talk",
  ],
  [
    "a heart that races, skips or stumbles",
    "sudden weakness or numbness, trouble speaking or seeing, a sudden bad headache",
    "sharp or sudden pain in a joint or muscle",
  ],
];

/** The list of stop signs, with what to do. */
export function stopSigns({ text: size }: Spacing): PaperNode {
  return keepTogether([
    heading(2, "Stop at once and sit down for"),
    columns(STOP_SIGNS.map((signs) => ({ width: 1, children: [list(signs, { size })] }))),
    paragraph("If it does not pass within a few minutes, call your local emergency number. Do not train on the same day, and ask a doctor before the next session.", { size, weight: "semibold" }),
  ]);
}
