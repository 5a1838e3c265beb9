import { COMMAND_PRIORITY_CRITICAL, KEY_ARROW_DOWN_COMMAND, KEY_ARROW_UP_COMMAND, KEY_ENTER_COMMAND, KEY_ESCAPE_COMMAND, KEY_TAB_COMMAND, type LexicalEditor } from "lexical";
import { mergeRegister } from "@lexical/utils";
import { useEffect, useState } from "react";
import type { Block } from "../../shared/episode";
import { findExercise, searchExercises, type Exercise } from "../../shared/exercises";
import type { Anchor } from "./use-menu";

const MOST = 6;

/** Exercises whose name begins like the title being typed; empty once the title names one. */
export function offersFor(title: string): readonly Exercise[] {
  return title.trim().length < 2 || findExercise(title) ? [] : searchExercises(title, MOST);
}

/**
 * The catalogue under the title being typed. Down and Up choose, Enter takes the name, Tab takes the name with the
 * catalogue's cues, fault and caution as lines to edit. Nothing is chosen until an arrow is pressed, so Enter still
 * starts a new line for a title of one's own.
 */
export function ExercisePicker({ editor, block, anchor, onPick }: { editor: LexicalEditor; block: Block; anchor: Anchor; onPick: (exercise: Exercise, withLines: boolean) => void }) {
  const [at, setAt] = useState(-1);
  const [closedFor, setClosedFor] = useState<string | null>(null);
  const offers = closedFor === block.title ? [] : offersFor(block.title);
  const chosen = offers[at] ?? null;

  useEffect(() => setAt(-1), [block.title]);
  useEffect(() => {
    if (offers.length === 0) return;
    const move = (by: number) => (event: KeyboardEvent): boolean => {
      event.preventDefault();
      setAt((now) => (now + by + offers.length + (now === -1 && by === -1 ? 1 : 0)) % offers.length);
      return true;
    };
    const take = (withLines: boolean) => (event: KeyboardEvent | null): boolean => {
      if (!chosen) return false;
      event?.preventDefault();
      onPick(chosen, withLines);
      return true;
    };
    return mergeRegister(
      editor.registerCommand(KEY_ARROW_DOWN_COMMAND, move(1), COMMAND_PRIORITY_CRITICAL),
      editor.registerCommand(KEY_ARROW_UP_COMMAND, move(-1), COMMAND_PRIORITY_CRITICAL),
      editor.registerCommand(KEY_ENTER_COMMAND, take(false), COMMAND_PRIORITY_CRITICAL),
      editor.registerCommand(KEY_TAB_COMMAND, take(true), COMMAND_PRIORITY_CRITICAL),
      editor.registerCommand(KEY_ESCAPE_COMMAND, () => {
        setClosedFor(block.title);
        return true;
      }, COMMAND_PRIORITY_CRITICAL),
    );
  }, [editor, offers, chosen, block.title, onPick]);

  useEffect(() => {
    const root = editor.getRootElement();
    if (!root) return;
    if (chosen) root.setAttribute("aria-activedescendant", `pick-${chosen.id}`);
    if (offers.length > 0) root.setAttribute("aria-controls", "exercise-offers");
    return () => {
      root.removeAttribute("aria-activedescendant");
      root.removeAttribute("aria-controls");
    };
  }, [editor, chosen, offers.length]);

  if (offers.length === 0) return null;
  return (
    <div className="sheet-menu picker" style={anchor}>
      <ul role="listbox" aria-label="Exercises in the catalogue" id="exercise-offers">
        {offers.map((exercise, i) => (
          <li key={exercise.id} id={`pick-${exercise.id}`} role="option" aria-selected={i === at} onPointerDown={(event) => {
            event.preventDefault();
            onPick(exercise, event.shiftKey);
          }}>
            <b>{exercise.name}</b> <span className="second">{exercise.station}</span>
          </li>
        ))}
      </ul>
      <p className="second">Down to choose. Enter takes the name, Tab the name with usual cues, a fault and a caution.</p>
    </div>
  );
}
