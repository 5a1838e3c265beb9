import { bench, describe } from "vitest";
import { parseSetLine } from "../../shared/training";
import { SET_LINE_CASES } from "../unit/training/set-line.cases";

const lines = SET_LINE_CASES.filter(([, scheme]) => scheme !== null).map(([text]) => text);
const json = SET_LINE_CASES.filter(([, scheme]) => scheme !== null).map(([, scheme]) => JSON.stringify(scheme));

/** Read the ratio, not the seconds: both read the same schemes, one from shorthand, one from JSON, in the same run. */
describe(`reading ${lines.length} schemes`, () => {
  bench("from set lines", () => {
    for (const line of lines) parseSetLine(line);
  });
  bench("from JSON, for comparison", () => {
    for (const text of json) JSON.parse(text);
  });
});
