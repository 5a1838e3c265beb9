import { countingIds, emptyBlock, emptyEpisode, newLine, type Episode, type Line } from "../../shared/episode";
import { EXERCISES } from "../../shared/exercises";

/** Said over and over in another order: twenty words each. */
const SENTENCES = [
  "Set the feet first, then the hands, and look at one spot on the floor before the first rep begins.",
  "Breathe in on the way down, breathe out on the way up, and keep the same pace until the end.",
  "Take a lighter pair today if the last set felt rushed, because clean reps matter more than the number here.",
  "Stop the set when the shape changes, rest for the whole minute and a half, then go again as before.",
  "Push the floor away with both feet, keep the ribs down, and let the arms hang long between the reps.",
] as const;
const SAY_LINES = 5;

/** @returns an episode of exercise blocks, about a hundred spoken words in each */
export function largeEpisode(blocks: number): Episode {
  const newId = countingIds("bench-");
  return emptyEpisode(newId, {
    title: "A long session", session: { place: "Gym", date: "2027-03-04", time: "06:45", slotMinutes: 600, kit: [], units: "kg", alone: true, cameras: 1 },
    blocks: Array.from({ length: blocks }, (_, at) => {
      const exercise = EXERCISES[(at * 7) % EXERCISES.length];
      const said = Array.from({ length: SAY_LINES }, (__, line) => newLine(newId, "say", SENTENCES[(at + line) % SENTENCES.length] ?? ""));
      return emptyBlock(newId, "exercise", {
        title: exercise?.name ?? "", exercise: exercise?.id ?? null,
        sets: [{ id: newId(), role: "ramp-up", text: "1 x 8 @ 12 kg, rest 60 s" }, { id: newId(), role: "working", text: `3 x 8-10 @ ${20 + (at % 10) * 2} kg, tempo 3-1-1-0, rest 90 s` }],
        lines: [
          newLine(newId, "cue", "Lead with the elbow and pause at the top."), newLine(newId, "avoid", "Do not swing the weight up."),
          ...said, newLine(newId, "shot", "Side, full, set 2, 12 s: the whole arm path"), newLine(newId, "shot", "Front, medium, set 3, 8 s: shoulders"),
        ],
      });
    }),
  });
}

/** The same episode in new objects, so that nothing is remembered of it. */
export function fresh(episode: Episode): Episode {
  return { ...episode, session: { ...episode.session }, blocks: episode.blocks.map((block) => ({ ...block, lines: block.lines.map((line) => ({ ...line })), sets: block.sets.map((set) => ({ ...set })) })) };
}

export function middleSayLine(episode: Episode): Line {
  const line = episode.blocks[Math.floor(episode.blocks.length / 2)]?.lines.find(({ kind }) => kind === "say");
  if (!line) throw new Error("The episode says nothing in its middle block");
  return line;
}

/** Words that have not been there before, as each keystroke makes them. */
export function typing(text: string): () => string {
  let strokes = 0;
  return () => `${text} ${(strokes++).toString(36)}`;
}
