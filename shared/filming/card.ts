import type { Episode } from "../episode";
import { CARD_MARGIN, formatNamed, formatOf, recordedMinutes, RECORDING_FORMATS, recordingOf, USUAL_FORMAT, type Recording, type RecordingFormat } from "./recording";

/** Kept clear on the phone: it stops before it is quite full. Decimal gigabytes. Common practice, no source. */
export const RESERVE_GIGABYTES = 2;
/** Never planned on: the last part of a battery goes fastest. Common practice, no source. */
const BATTERY_RESERVE = 0.2;
/** So many minutes of 4K or of 60 frames warm a phone. Common practice, no source. */
const WARM_MINUTES = 15;

/** Card and battery of an episode, and whether they last. */
export interface CardPlan extends Recording {
  readonly format: RecordingFormat;
  /** Free space named for the session, decimal gigabytes; null when nobody looked. */
  readonly freeGigabytes: number | null;
  /** Free space left beyond margin and reserve; negative for too little, null when nobody looked. */
  readonly spareGigabytes: number | null;
  readonly batteryLasts: boolean;
  readonly warm: boolean;
}

/**
 * What the recording takes of the card and the battery that the session names.
 * @param minutes - of recording; left out, as the shots add up to
 */
export function cardPlan(episode: Episode, minutes = recordedMinutes(episode.blocks)): CardPlan {
  const format = formatOf(episode);
  const { freeGigabytes = null, batteryMinutes = null } = episode.session.filming ?? {};
  const recording = recordingOf(minutes, format, batteryMinutes ?? undefined);
  return {
    ...recording, format, freeGigabytes,
    spareGigabytes: freeGigabytes === null ? null : freeGigabytes - RESERVE_GIGABYTES - recording.gigabytes,
    batteryLasts: recording.batteries <= 1 - BATTERY_RESERVE,
    warm: minutes > WARM_MINUTES && /^4K|60/.test(format),
  };
}

/** A need is told upwards, what is left downwards: nobody packs too little by rounding. */
const needed = (gigabytes: number): string => `${(Math.ceil(gigabytes * 10 - 1e-6) / 10).toFixed(1)} GB`;
const left = (gigabytes: number): string => `${(Math.floor(gigabytes * 10 + 1e-6) / 10).toFixed(1)} GB`;

/** The format with the best picture that still fits. */
function formatThatFits({ minutes, format }: CardPlan, room: number): RecordingFormat | null {
  const smaller = (Object.keys(RECORDING_FORMATS) as RecordingFormat[])
    .filter((each) => RECORDING_FORMATS[each] < RECORDING_FORMATS[format] && recordingOf(minutes, each).gigabytes <= room)
    .sort((a, b) => RECORDING_FORMATS[b] - RECORDING_FORMATS[a]);
  return smaller[0] ?? null;
}

function spaceInWords(plan: CardPlan): string {
  const { freeGigabytes, spareGigabytes } = plan;
  if (freeGigabytes === null || spareGigabytes === null) return `Have ${needed(plan.gigabytes + RESERVE_GIGABYTES)} free: files vary by ${CARD_MARGIN * 100} %, and a phone stops before it is full.`;
  if (spareGigabytes >= 0) return `${freeGigabytes} GB are free: enough, with ${left(spareGigabytes)} to spare after a margin of ${CARD_MARGIN * 100} % and ${RESERVE_GIGABYTES} GB kept clear.`;
  const other = formatThatFits(plan, freeGigabytes - RESERVE_GIGABYTES);
  return `${freeGigabytes} GB are free, ${needed(-spareGigabytes)} too little with a margin of ${CARD_MARGIN * 100} % and ${RESERVE_GIGABYTES} GB kept clear. Clear space${other ? `, or film in ${other}` : ""}.`;
}

function batteryInWords({ batteries, batteryLasts }: CardPlan): string {
  if (batteries > 1) return `It takes ${Math.ceil(batteries / (1 - BATTERY_RESERVE))} full batteries: bring power, and charge while you rest.`;
  const percent = Math.max(1, Math.ceil(batteries * 100 - 1e-6));
  return batteryLasts ? `It takes ${percent} % of a full battery.` : `It takes ${percent} % of a full battery, and the last ${BATTERY_RESERVE * 100} % are not to be planned on: bring power.`;
}

/**
 * Card, battery and heat in whole sentences.
 * @param minutes - of recording; left out, as the shots add up to
 */
export function cardInWords(episode: Episode, minutes?: number): string[] {
  const plan = cardPlan(episode, minutes);
  const written = episode.session.filming?.format.trim() ?? "";
  const unknown = written !== "" && formatNamed(written) === null ? [`The recording format "${written}" is not known; it is counted as ${USUAL_FORMAT}.`] : [];
  if (!(plan.minutes > 0)) return [...unknown, "No shots are planned, so nothing is counted for card and battery."];
  return [
    ...unknown,
    `About ${Math.max(1, Math.round(plan.minutes))} min of recording in ${plan.format}, ${needed(plan.megabytes / 1000)}.`,
    spaceInWords(plan),
    batteryInWords(plan),
    ...(plan.warm ? ["That much in this format warms a phone until it stops by itself: take it out of its case and out of the sun, and stop it between sets."] : []),
  ];
}
