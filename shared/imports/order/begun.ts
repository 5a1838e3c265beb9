import { meantAt, nameAt } from "../listener/meant";
import { startsHeard, type Listened } from "../listener/listen";
import type { Listener } from "../listener/weights";
import { nameById, type Name } from "../names/lexicon";
import { variantOf } from "../names/variant";
import { unnamed, type Candidate } from "./candidates";
import type { Begun, Speech } from "./speech";

/** The exercises of a session: what each turn of the speaker turns to. */

/** From this share on a name begins an exercise. */
const STARTS = 0.5;
/** An exercise that nothing names is taken for one of the catalogue from this share on. */
const SURE = 0.2;

/** A turn, and the name that was found to begin an exercise there; null where none was. */
interface Turn {
  readonly at: number;
  readonly begins: Candidate | null;
}

/** Names that begin exercises with the turns they follow; a second name after one turn is a turn of its own. */
function turnsWithNames(turns: readonly number[], starts: readonly Candidate[], end: number): Turn[] {
  const own = (candidate: Candidate): Turn => ({ at: candidate.span.from, begins: candidate });
  const before = starts.filter(({ span }) => span.to <= (turns[0] ?? end)).map(own);
  return [...before, ...turns.flatMap((at, place): Turn[] => {
    const until = turns[place + 1] ?? end;
    const here = starts.filter(({ span }) => span.to > at && span.from < until);
    const others = here.filter((candidate, index) => index > 0 && candidate.name.title !== here[index - 1]?.name.title);
    return [{ at, begins: here[0] ?? null }, ...others.map(own)];
  })];
}

/** "The guy next to me does pulldowns": what is named in passing, and nothing counted of it, is not done. */
const isIdle = ({ passing }: Candidate, { statements }: Speech, from: number, until: number): boolean => passing && !statements.some((statement) => statement.from >= from && statement.from < until);

/** The name of an exercise that is done without its name being said; null where it is not heard surely enough. */
function heardAt(listened: Listened, at: number, until: number, listener: Listener): Name | null {
  const { id, share } = meantAt(listened, at, until, listener);
  return share > SURE ? nameById(id) : null;
}

/** The exercises of the session, in order, each once. @param speech - with its figures @param turns - words at which the speaker turns to one */
export function begunIn(speech: Speech, listened: Listened, turns: readonly number[], listener: Listener): Begun[] {
  const { words, candidates } = speech;
  const shares = startsHeard(listened, candidates, listener);
  const starts = candidates.filter((_, at) => (shares[at] ?? 0) > STARTS);
  const all = turnsWithNames(turns, starts, words.length);
  const titles = new Set<string>();
  return all.flatMap(({ at, begins }, place): Begun[] => {
    const until = all[place + 1]?.at ?? words.length;
    const named = begins ?? nameAt(listened, candidates, at, until, listener);
    if (named && (begins === null ? named.passing : isIdle(named, speech, at, until))) return [];
    const name: Name | null = named ? variantOf(named.name, named.span, words, at, until) : heardAt(listened, at, until, listener);
    if (name === null || titles.has(name.title)) return [];
    titles.add(name.title);
    return [{ turn: at, candidate: { ...(named ?? unnamed(at)), name } }];
  });
}
