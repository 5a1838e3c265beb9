import { refuseAmountRange, takeDistance, takeDuration } from "./amounts";
import type { Draft } from "./draft";
import { stateMinutes } from "./emom";
import type { Reader } from "./reader";

/** A time or distance without a scheme: work when none is stated yet, rest after complete work. */
export function looseAmount(reader: Reader, draft: Draft): boolean {
  const from = reader.at;
  const holding = reader.take("hold", "holds");
  if (!draft.hasWork) {
    const meters = takeDistance(reader, true);
    if (meters !== null) {
      refuseAmountRange(reader, from);
      if (meters <= 0) reader.refuse("A distance is more than zero", from);
      if (draft.emom || draft.scheme.emomMinutes !== undefined) reader.at = from;
      else {
        draft.work(reader, from, { meters });
        return true;
      }
    }
  }
  const length = takeDuration(reader);
  if (!length) {
    reader.at = from;
    return false;
  }
  refuseAmountRange(reader, from);
  if (draft.emom) {
    stateMinutes(reader, draft, from, length.seconds);
    return true;
  }
  if (!draft.hasWork) {
    if (length.seconds <= 0) reader.refuse("A working time is more than zero", from);
    draft.work(reader, from, { seconds: length.seconds });
    draft.bout = length.unit === "minute" || length.unit === "clock";
    reader.take("-");
    reader.take("hold", "holds", "work", "on");
    return true;
  }
  if (!draft.complete || holding || reader.lead === "for" || reader.lead === "@" || reader.lead === "at" || reader.lead === "in") {
    reader.refuse(`"${reader.since(from)}" is neither work nor rest here: write "rest" before a rest`, from);
  }
  if (length.unit === "m" && length.seconds > 600) reader.refuse(`"${reader.since(from)}" may be minutes or metres: write min or metres`, from);
  draft.state(reader, from, "restSeconds", length.seconds);
  return true;
}
