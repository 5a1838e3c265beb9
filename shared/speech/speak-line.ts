import { memoOn, type Line } from "../episode";
import { speak } from "./speak";
import type { Pace, Spoken } from "./types";

const lineAt = memoOn((pace: Pace) => memoOn((line: Line): Spoken => speak(line.text, pace)));

/** How long a line takes to say. Remembered per pace and line object, so typing in one line speaks only that line again. */
export const speakLine = (line: Line, pace: Pace): Spoken => lineAt(pace)(line);
