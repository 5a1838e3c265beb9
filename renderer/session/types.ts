import type { Voice } from "../../shared/bridge";
import type { Edit, Episode } from "../../shared/episode";
import type { EpisodeClocks } from "../../shared/clocks";
import type { Finding } from "../../shared/checks";
import type { Pace } from "../../shared/speech";

export const PLACES = ["write", "train", "shoot", "speak", "publish"] as const;
export type Place = (typeof PLACES)[number];

/** Where the words are on disk. */
export interface FileState {
  /** File name in the library; null until the first save. */
  readonly name: string | null;
  readonly status: "saved" | "unsaved" | "saving" | "failed" | "changed-outside";
  /** ISO time of the last good save. */
  readonly savedAt: string | null;
  /** One sentence when status is failed or changed-outside. */
  readonly message: string | null;
}

/** Everything a screen may read. A new object on each change; parts that did not change keep their identity. */
export interface Session {
  readonly episode: Episode;
  readonly clocks: EpisodeClocks;
  /** Open and waived findings; computed in idle time, so a moment behind the words, and new ones about words being typed a moment more. */
  readonly findings: readonly Finding[];
  readonly file: FileState;
  /** Where the caret is. */
  readonly here: { readonly block: string | null; readonly line: string | null };
  readonly place: Place;
  /** The speaker's own pace, or the usual one until it was measured. */
  readonly pace: Pace;
  /** What the pace was measured on; null for the usual one. */
  readonly voice: Voice | null;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
}

/** Everything a screen may do. All changes to the episode are edits, so one undo covers the whole app. */
export interface SessionActions {
  readonly apply: (edits: readonly Edit[]) => void;
  /** The same for one press that does a whole thing, such as a remedy: always an undo step of its own. */
  readonly mend: (edits: readonly Edit[]) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  /** Opens Write with the caret in that block or line, the words selected when a range is given. */
  readonly goTo: (target: { block: string; line?: string | null; range?: { start: number; end: number } | null }) => void;
  readonly show: (place: Place) => void;
  readonly waive: (finding: Finding, reason: string) => void;
  readonly unwaive: (finding: Finding) => void;
  /** The series stops checking for this; a `stop` or `fix` is found all the same. */
  readonly leaveOut: (rule: string) => void;
  /** Takes such a check up again. */
  readonly checkAgain: (rule: string) => void;
  readonly newEpisode: () => void;
  /** An empty page that knows the series, the gym and what was lifted in this one. */
  readonly nextEpisode: () => void;
  readonly openDemo: () => void;
  /** Takes a draft into the window as a new, unsaved episode. Resolves to a sentence when the open one could not be left. */
  readonly startFrom: (draft: Episode) => Promise<string | null>;
  /** Resolves to a sentence when the file cannot be opened; null when it is open. */
  readonly openFile: (file: string) => Promise<string | null>;
  readonly save: () => Promise<void>;
  /** After an outside change: keep these words under a new name, or take the file's. */
  readonly saveAsNew: () => Promise<void>;
  readonly takeTheirs: () => Promise<void>;
  /** Puts an older state's words into the editor, undoably. */
  readonly restore: (episode: Episode) => void;
  /** Counts at a measured pace from now on, in every episode of the library; null goes back to the usual one. Resolves to a sentence when it could not be kept. */
  readonly keepVoice: (voice: Voice | null) => Promise<string | null>;
  readonly newId: () => string;
}

