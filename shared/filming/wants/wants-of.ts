import type { Block, BlockKind, Episode, Partner } from "../../episode";
import type { LineShot } from "../shots";
import { blockWantsOf, plannedIn } from "./block-wants";
import type { EpisodeWant } from "./types";
import { usualShotOf } from "./usual";
import { shotOf, want } from "./want";

/** How coaches write it in a shot line. */
const WORDS = {
  place: /\b(?:establish\w*|whole (?:room|gym|place)|the (?:room|gym|place|building)|entrance|front door|outside)\b/i,
  still: /\b(?:thumb ?nails?|stills?|cover (?:picture|photo|image)|title (?:picture|photo|image)|photo)\b/i,
  tone: /\b(?:room ?tone|room sound|silence|silent room|atmos\w*|wild track|ambien\w*)\b/i,
  product: /\b(?:products?|pack shot|sponsor\w*|partner\w*)\b/i,
} as const;

const firstOf = (episode: Episode, kind: BlockKind): Block | null => episode.blocks.find((block) => block.kind === kind) ?? null;
const plannedShots = (episode: Episode): LineShot[] => episode.blocks.flatMap(plannedIn);

/** The name, or a word of it that nobody uses by chance. */
function isAbout(partner: Partner, text: string): boolean {
  const words = partner.name.toLowerCase().match(/[\p{L}\p{N}]{4,}/gu) ?? [];
  const said = text.toLowerCase();
  return said.includes(partner.name.trim().toLowerCase()) || words.some((word) => new RegExp(`(?<![\\p{L}\\p{N}])${word}(?![\\p{L}\\p{N}])`, "u").test(said));
}

function partnerWant(partner: Partner, episode: Episode, shots: readonly LineShot[]): EpisodeWant[] {
  const name = partner.name.trim();
  if (name === "") return [];
  const only = episode.partners.length === 1;
  const cover = shots.find(({ line: { text } }) => isAbout(partner, text) || (only && WORDS.product.test(text)));
  return [want(
    { id: `partner:${partner.id}`, block: firstOf(episode, "opening")?.id ?? episode.blocks[0]?.id ?? null, what: `what ${name} stands for, with its disclosure`, coveredBy: cover?.line.id ?? null },
    shotOf({ angle: "three-quarter", size: "medium", seconds: 6, subject: `${name} in the picture while the disclosure is said` }),
  )];
}

/** An opening or a closing to camera where the episode has no block for it. */
function missing(episode: Episode, kind: "opening" | "closing"): EpisodeWant[] {
  const asked = usualShotOf(kind);
  return asked === null || firstOf(episode, kind) ? [] : [want({ id: kind, block: null, what: `the ${kind}, to camera`, coveredBy: null }, asked)];
}

/**
 * Everything the episode needs a picture or a sound of, in the order of the session: the opening and the place, each block's own,
 * the partners, the closing, a still and the room's sound. What a shot line plans already names that line.
 */
export function wantsOf(episode: Episode): EpisodeWant[] {
  const shots = plannedShots(episode);
  const coverOf = (said: RegExp, also: (item: LineShot) => boolean = () => false): string | null =>
    shots.find((item) => said.test(item.line.text) || also(item))?.line.id ?? null;
  const opening = firstOf(episode, "opening")?.id ?? null;
  const place = want(
    { id: "place", block: opening, what: "the place, once, with room around you", coveredBy: coverOf(WORDS.place, ({ shot }) => shot.size === "wide") },
    shotOf({ angle: "three-quarter", size: "wide", seconds: 6, need: "nice", subject: "the place, and you in it" }),
  );
  const still = want(
    { id: "thumbnail", block: firstOf(episode, "exercise")?.id ?? null, what: "a still for the thumbnail", coveredBy: coverOf(WORDS.still) },
    shotOf({ angle: "three-quarter", size: "medium", seconds: 4, need: "nice", subject: "still for the thumbnail, with room for words" }),
  );
  const tone = want(
    { id: "room-tone", block: firstOf(episode, "closing")?.id ?? null, what: "30 s of room tone", coveredBy: coverOf(WORDS.tone) },
    shotOf({ seconds: 30, need: "nice", subject: "room tone, the room without you" }),
  );
  return [
    ...missing(episode, "opening"), place, ...episode.blocks.flatMap(blockWantsOf), ...episode.partners.flatMap((partner) => partnerWant(partner, episode, shots)),
    ...missing(episode, "closing"), still, tone,
  ];
}
