/** What was lifted in a set. */
export interface Lifted {
  readonly load: number | null;
  readonly reps: number | null;
  readonly rir: number | null;
}

/** What to do about a station that is taken: its block last, not today, or by the alternate with this index. */
export type TakenAnswer = "later" | "dropped" | number;

/** Everything somebody can press that changes the session. `at` is when, in milliseconds. The list of presses is the whole state: taking the last one off is undo. */
export type Press = { readonly at: number } & (
  | { readonly type: "start" }
  | { readonly type: "begin"; readonly set: string }
  | { readonly type: "end"; readonly set: string }
  /** In the box, not in it, or not answered (null). */
  | { readonly type: "tick"; readonly shot: string; readonly got: boolean | null }
  | { readonly type: "extra"; readonly what: string; readonly got: boolean }
  | { readonly type: "angle-lost"; readonly block: string; readonly mark: string }
  | { readonly type: "station-taken"; readonly block: string; readonly then: TakenAnswer }
  | { readonly type: "go"; readonly set: string }
  | { readonly type: "log"; readonly set: string; readonly lifted: Lifted }
  | { readonly type: "without-closing" }
  | { readonly type: "finish" }
);

/** A press as it will be taken back: "Undo: set 2 begun" */
export const PRESS_WORDS: Readonly<Record<Press["type"], string>> = {
  start: "session begun", begin: "set begun", end: "set ended", tick: "answer", extra: "tick", "angle-lost": "angle lost", "station-taken": "station taken", go: "jump", log: "numbers", "without-closing": "leaving without the closing", finish: "session over",
};
