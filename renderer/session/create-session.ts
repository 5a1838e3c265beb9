import { $getRoot, $getSelection, $isRangeSelection, $getState, HISTORIC_TAG, HISTORY_MERGE_TAG, HISTORY_PUSH_TAG, REDO_COMMAND, UNDO_COMMAND, type LexicalEditor } from "lexical";
import type { Api, Voice } from "../../shared/bridge";
import { applyEdits, emptyEpisode, newDemo, nextEpisode, type Edit, type Episode } from "../../shared/episode";
import { DEFAULT_PACE } from "../../shared/speech";
import { createSheetEditor, type UndoState } from "../editor/create-editor";
import { $syncEpisode, LOAD_TAG } from "../editor/load";
import { newId } from "../editor/new-id";
import { $projectEpisode, newMemory } from "../editor/projection";
import { $findById, $headOf, $isSheetNode, $topOf } from "../editor/rows";
import { idState } from "../editor/states";
import { selectWords } from "../editor/select-words";
import { createCalm } from "./calm";
import { derive, whenIdle } from "./derive";
import { createFileKeeper, type FileKeeper } from "./file-keeper";
import { createStore, type Store } from "./store";
import type { Session, SessionActions } from "./types";

/** Quiet milliseconds before clocks and checks run again. */
const DERIVE_AFTER = 120;
/** Edits of the same field within this time undo together. Milliseconds. */
const MERGE_WITHIN = 1000;

/** The last change that the next one may undo together with: when it was made, and what it changed. */
interface LastApply {
  readonly at: number;
  readonly shape: string;
}
const NOTHING_APPLIED: LastApply = { at: 0, shape: "" };

/** What an edit changes, so that letters typed one after the other are told from other changes; "" for what is never typed. */
function typedShape(edit: Edit): string {
  if (edit.type === "set-facts") return `${edit.type} ${Object.keys(edit.fields).join()}`;
  if (edit.type === "set-block") return `${edit.type} ${edit.block} ${Object.keys(edit.fields).join()}`;
  // A line that begins with its first letter is typed on.
  if (edit.type === "insert-line" && edit.line.text !== "") return `set-line ${edit.line.id} text`;
  if (edit.type === "set-line") return `${edit.type} ${edit.line} ${Object.keys(edit.fields).join()}`;
  return edit.type === "set-title" ? edit.type : "";
}

export interface OpenSession {
  readonly store: Store<Session>;
  readonly actions: SessionActions;
  readonly editor: LexicalEditor;
  readonly files: FileKeeper;
}

/** Opens the window's one session on an empty page; the caller then opens a file or the demo. */
export function createSession(api: Api, report: (error: Error) => void): OpenSession {
  const files = createFileKeeper(api);
  const undoState = createStore<UndoState>({ canUndo: false, canRedo: false });
  const { editor, forget } = createSheetEditor(undoState.set, report);
  editor.update(() => $syncEpisode(emptyEpisode(newId)), { discrete: true, tag: [LOAD_TAG, HISTORY_MERGE_TAG] });
  const projected = editor.read(() => $projectEpisode(newMemory()));
  if (!projected) throw new Error("createSession: the editor did not take the empty page");
  const first = projected.episode;
  let { memory } = projected;
  files.opened(null, null, first);
  const store: Store<Session> = createStore<Session>({
    ...derive(first, DEFAULT_PACE, newId),
    file: files.state.get(), here: { block: null, line: null }, place: "write", pace: DEFAULT_PACE, voice: null, ...undoState.get(),
  });
  const patch = (change: Partial<Session>): void => store.set({ ...store.get(), ...change });
  undoState.subscribe(() => patch(undoState.get()));
  files.state.subscribe(() => patch({ file: files.state.get() }));

  const rederive = whenIdle<Episode>(DERIVE_AFTER, (episode) => {
    const { clocks, findings } = derive(episode, store.get().pace, newId);
    if (store.get().episode === episode) patch({ clocks, findings: calm.found(findings) });
  });
  const calm = createCalm((findings) => patch({ findings }));
  let lastApply = NOTHING_APPLIED;

  editor.registerUpdateListener(({ editorState, tags }) => {
    editorState.read(() => {
      const projected = $projectEpisode(memory);
      if (!projected) return;
      memory = projected.memory;
      const selection = $getSelection();
      const top = $isRangeSelection(selection) ? $topOf(selection.anchor.getNode()) : null;
      const head = top ? $headOf(top) : null;
      const block = head ? $getState(head, idState) || null : null;
      const line = top && $isSheetNode(top) && !top.is(head) ? $getState(top, idState) : null;
      const before = store.get();
      const here = before.here.block === block && before.here.line === line ? before.here : top ? { block, line } : before.here;
      if (projected.episode !== before.episode) {
        // Undo, another place or another episode came between: what is typed next is a step of its own, or undo would lose a state.
        lastApply = NOTHING_APPLIED;
        patch({ episode: projected.episode, here });
        files.changed(projected.episode);
        const isTyped = block !== null && !tags.has(LOAD_TAG) && !tags.has(HISTORIC_TAG);
        if (isTyped) calm.typed({ block, line });
        else calm.rest();
        rederive(projected.episode);
      } else if (here !== before.here) {
        patch({ here });
        if (here.block === null || !calm.isTyping({ block: here.block, line: here.line })) calm.rest();
      }
    });
  });

  /** Puts another episode into the window: a new history, no autosave until it is changed. */
  const load = (episode: Episode, file: string | null, stamp: string | null): void => {
    editor.update(() => {
      $syncEpisode(episode, null);
      $getRoot().getFirstChild()?.selectStart();
    }, { discrete: true, tag: [LOAD_TAG, HISTORY_MERGE_TAG, "skip-dom-selection"] });
    forget();
    const now = store.get().episode;
    files.opened(file, stamp, now);
    calm.rest();
    const derived = derive(now, store.get().pace, newId);
    patch({ ...derived, findings: calm.found(derived.findings), here: { block: now.blocks[0]?.id ?? null, line: null }, place: "write" });
  };

  /** Saves what was changed before another episode takes the window; a sentence when that failed, and then nothing is taken. */
  const leave = async (): Promise<string | null> => {
    await files.saveNowIfChanged();
    const { status, message } = files.state.get();
    return status === "failed" || status === "changed-outside" ? `The open episode is not saved yet, so it stays open. ${message ?? ""}`.trim() : null;
  };

  const apply = (edits: readonly Edit[], isOwnStep = false): void => {
    const before = store.get().episode;
    const after = applyEdits(before, edits);
    if (after === before) return;
    // Typing in a field of a form comes as many small edits; a second's worth undoes as one.
    const shape = isOwnStep ? "" : edits.map(typedShape).join();
    const now = performance.now();
    const merge = shape !== "" && shape === lastApply.shape && now - lastApply.at < MERGE_WITHIN;
    editor.update(() => $syncEpisode(after, before), { discrete: true, tag: [LOAD_TAG, merge ? HISTORY_MERGE_TAG : HISTORY_PUSH_TAG, "skip-dom-selection"] });
    lastApply = { at: now, shape };
  };

  const mend = (edits: readonly Edit[]): void => apply(edits, true);

  /** Everything is counted anew at this pace. */
  const speakAt = (voice: Voice | null): void => {
    patch({ voice, pace: voice?.pace ?? DEFAULT_PACE });
    rederive(store.get().episode);
  };
  void api["voice:read"]({}).then((answer) => {
    if (answer.ok && answer.voice !== null) speakAt(answer.voice);
    else if (!answer.ok) report(new Error(answer.message));
  }, report);

  const actions: SessionActions = {
    apply: (edits) => apply(edits),
    mend,
    undo: () => void editor.dispatchCommand(UNDO_COMMAND, undefined),
    redo: () => void editor.dispatchCommand(REDO_COMMAND, undefined),
    goTo: ({ block, line = null, range = null }) => {
      patch({ place: "write" });
      // The sheet may only now be put on screen.
      requestAnimationFrame(() => {
        const key = editor.read(() => $findById(line ?? block)?.getKey() ?? $findById(block)?.getKey() ?? null);
        if (key === null) return;
        editor.focus(() => {
          selectWords(editor, key, range);
          editor.getElementByKey(key)?.scrollIntoView({ block: "center" });
        });
      });
    },
    show: (place) => patch({ place }),
    waive: (finding, reason) => {
      const waiver = { id: newId(), rule: finding.rule, ruleVersion: finding.ruleVersion, block: finding.block, line: finding.line, text: finding.words, reason };
      mend([{ type: "set-facts", fields: { waivers: [...store.get().episode.waivers, waiver] } }]);
    },
    unwaive: (finding) => mend([{ type: "set-facts", fields: { waivers: store.get().episode.waivers.filter((waiver) => waiver.id !== finding.waiver?.id) } }]),
    leaveOut: (rule) => {
      const { series } = store.get().episode;
      mend([{ type: "set-facts", fields: { series: { ...series, quiet: [...new Set([...series.quiet, rule])] } } }]);
    },
    checkAgain: (rule) => {
      const { series } = store.get().episode;
      mend([{ type: "set-facts", fields: { series: { ...series, quiet: series.quiet.filter((id) => id !== rule) } } }]);
    },
    nextEpisode: () => {
      const last = store.get().episode;
      void leave().then((left) => left === null && load(nextEpisode(last, newId), null, null));
    },
    newEpisode: () => void leave().then((left) => left === null && load(emptyEpisode(newId), null, null)),
    openDemo: () => void leave().then((left) => left === null && load(newDemo(newId), null, null)),
    startFrom: async (draft) => {
      const left = await leave();
      if (left !== null) return left;
      load(draft, null, null);
      // A draft is on no disk yet, so it is saved before anything of it is changed.
      files.changed({ ...store.get().episode });
      return null;
    },
    openFile: async (file) => {
      const left = await leave();
      if (left !== null) return left;
      const answer = await api["episode:open"]({ file });
      if (!answer.ok) return answer.message;
      load(answer.episode, answer.file, answer.stamp);
      return null;
    },
    save: files.saveNow,
    saveAsNew: files.saveAsNew,
    takeTheirs: async () => {
      const { name } = store.get().file;
      if (name === null) return;
      const answer = await api["episode:open"]({ file: name });
      if (answer.ok) load(answer.episode, answer.file, answer.stamp);
    },
    restore: (episode) => {
      const before = store.get().episode;
      editor.update(() => $syncEpisode({ ...episode, id: before.id }, before), { discrete: true, tag: [LOAD_TAG, HISTORY_PUSH_TAG, "skip-dom-selection"] });
    },
    keepVoice: async (voice) => {
      speakAt(voice);
      try {
        const answer = await api["voice:keep"]({ voice });
        return answer.ok ? null : answer.message;
      } catch (error) {
        return `Your pace was not kept. ${error instanceof Error ? error.message : String(error)}`;
      }
    },
    newId,
  };

  api.on("library:changed", ({ file, stamp }) => files.changedOutside(file, stamp));
  return { store, actions, editor, files };
}
