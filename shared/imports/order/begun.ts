import { likeliest, meantAt, type Meant } from "../listener/meant";
import { startsHeard, type Listened, type Turning } from "../listener/listen";
import { keyOf, nameByKey, type Name } from "../names/lexicon";
import { variantOf } from "../names/variant";
import { hasWork } from "../schemes/compose";
import { plainIn } from "../source/words";
import type { Word } from "../types";
import { unnamed, type Candidate } from "./candidates";
import type { Begun, Speech } from "./speech";

/** The exercises of a session: what each turn of the speaker turns to. */

/** From this share on a name begins an exercise. */
const STARTS = 0.75;
/** An exercise that nothing names is taken for one that is known from this share on. */
const SURE = 0.2;

/** A turn, and the name that was found to begin an exercise there; null where none was. Where a name alone tells of it, its share is 0. */
interface Turn extends Turning {
  readonly begins: Candidate | null;
}

/** Names that begin exercises with the turns they follow; a second name after one turn is a turn of its own. */
function turnsWithNames(turns: readonly Turning[], starts: readonly Candidate[], end: number): Turn[] {
  const own = (candidate: Candidate): Turn => ({ at: candidate.span.from, share: 0, begins: candidate });
  const before = starts.filter(({ span }) => span.to <= (turns[0]?.at ?? end)).map(own);
  return [...before, ...turns.flatMap(({ at, share }, place): Turn[] => {
    const until = turns[place + 1]?.at ?? end;
    const here = starts.filter(({ span }) => span.to > at && span.from < until);
    const others = here.filter((candidate, index) => index > 0 && candidate.name.title !== here[index - 1]?.name.title);
    return [{ at, share, begins: here[0] ?? null }, ...others.map(own)];
  })];
}

/** "The guy next to me does pulldowns": what is named in passing is not done where nothing is counted of it, unless a turn to it is heard from this share on. */
const HEARD = 0.9;

/** In fewer words nothing is turned to that is neither named nor counted. */
const FEW = 12;

/** The title of an exercise that nothing names; further ones are numbered. */
const NO_NAME = "Unnamed exercise";

/** For an exercise that is surely begun and that nothing names: its sets are not lost, and the coach gives the name. */
function noName(begun: ReadonlySet<string>): Name {
  const count = [...begun].filter((title) => title.startsWith(NO_NAME)).length;
  return { title: count === 0 ? NO_NAME : `${NO_NAME} ${count + 1}`, exercise: null, words: [], letters: "", sound: "", everyday: false };
}

/** From this share on an exercise is meant whatever was named. */
const MEANT = 0.3;

/** What is named is not what is meant where the share of its exercise is less. */
const LEAST = 0.1;

/** The name by which a turn tells what it turns to, though none was heard to begin an exercise; none that is said in passing. */
function toldBy({ named, shares }: Meant): Candidate | null {
  if (named === null || named.passing) return null;
  return (shares.get(keyOf(named.name)) ?? shares.get("?") ?? 0) < LEAST ? null : named;
}

/** Words by which dumb-bells are spoken of. */
const DUMBBELLS = /^(?:dumb|dumbbells?|bells?|hands?)$/;

/** "Romanian deadlifts" are none with dumb-bells where nobody speaks of any. */
function isInvented(heard: Name, said: Name, words: readonly Word[]): boolean {
  const more = heard.words.filter((word) => !said.words.includes(word));
  return more.join() === "dumbbell" && heard.words.length === said.words.length + 1 && !words.some(({ plain }) => DUMBBELLS.test(plain));
}

/** So few words are between a name and the sets it is told with. */
const BESIDE = 4;

/** So many words behind a turn the name of what is turned to is said at the latest, where it counts against what is heard. */
const REACH = 10;
/** So many words before its name an exercise is turned to. */
const BEFORE_NAME = 6;
/** In so few words the listener hears less than in the whole episodes it learned from; in more, a name with its sets may be told of another day. */
const SHORT = 200;
/** Words that lead from a name to its sets. */
const LEADS = /^(?:(?:for|it's|that's|this is|we|we'll|we're|i|i'm|do|did|doing|is|are|and|with|just|here|again|today|a|of|so) ?)*$/;

/** "Lat pulldown, three sets of ten": a name with its sets and reps right behind it, so that nothing else can be meant. */
function isTold({ span, isThing, passing, takenBack, sure }: Candidate, { words, statements, candidates }: Speech): boolean {
  // "Hanging" from a bar is how pull-ups are done.
  if (!isThing || passing || takenBack || sure < 1 || /ing$/.test(words[span.to - 1]?.plain ?? "")) return false;
  const at = statements.findIndex(({ from, about, says }) => from >= span.to && from <= span.to + BESIDE && about === "working" && says.sets !== undefined);
  const [sets, work] = [statements[at], statements[at + 1]];
  if (sets && !LEADS.test(plainIn(words, span.to, sets.from).join(" "))) return false;
  if (!sets || !work || work.from > sets.to + BESIDE || !hasWork(work.says)) return false;
  return !candidates.some((other) => other.span.from >= span.to && other.span.from < sets.from);
}

/** What is turned to without a name is one of those spoken of elsewhere from this share on: "today's deadlifts", said in the greeting. */
const SPOKEN_OF = 0.05;

/** The likeliest of the exercises that are spoken of and that no turn begins; null where none is likely. */
function spokenOf(meant: Meant, candidates: readonly Candidate[], starts: readonly Candidate[]): Name | null {
  const taken = new Set(starts.map(({ name }) => keyOf(name)));
  const share = (name: Name): number => meant.shares.get(keyOf(name)) ?? 0;
  const spoken = candidates.flatMap(({ name, isThing, passing }) => (isThing && !passing && !taken.has(keyOf(name)) && share(name) > SPOKEN_OF ? [name] : []));
  return spoken.sort((a, b) => share(b) - share(a))[0] ?? null;
}

/** From this share on something is turned to, though nothing names it; between so few words it is only led over. */
const [TURNED, LED_OVER] = [0.8, 60];

/** Is one a nearer name of the other: "rows" that are bent-over? */
const isNearer = (one: Name, other: Name): boolean => one.words.every((word) => other.words.includes(word)) || other.words.every((word) => one.words.includes(word));

/** The name that counts: the one said, unless another exercise is heard surely enough, and much more surely; none where nothing is sure. */
function nameOf(said: Name | null, isSaid: boolean, meant: Meant, begun: ReadonlySet<string>, words: readonly Word[]): Name {
  const { key, share } = likeliest(meant);
  const heard = nameByKey(key);
  if (said === null) return share > SURE && heard !== null ? heard : noName(begun);
  const own = meant.shares.get(keyOf(said)) ?? 0;
  if (isSaid && heard !== null && !isNearer(heard, said)) return said;
  return heard !== null && !begun.has(heard.title) && !isInvented(heard, said, words) && share > Math.max(MEANT, 2 * own) ? heard : said;
}

/** The exercises of the session, in order, each once. @param speech - with its figures @param turns - where the speaker turns to one */
export function begunIn(speech: Speech, listened: Listened, turns: readonly Turning[]): Begun[] {
  const { candidates } = speech;
  const shares = startsHeard(listened, candidates);
  const starts = candidates.filter((_, at) => (shares[at] ?? 0) > STARTS);
  const first = begunBy(speech, listened, turns, starts);
  if (speech.words.length > SHORT) return first;
  const isBegun = ({ name }: Candidate): boolean => first.some(({ candidate }) => isNearer(candidate.name, name));
  const more = candidates.filter((candidate) => !isBegun(candidate) && isTold(candidate, speech));
  if (more.length === 0) return first;
  // A turn that begins another exercise stays its own.
  const isTurned = ({ span }: Candidate): boolean => turns.some(({ at }) => at <= span.from && at > span.from - BEFORE_NAME && !first.some(({ turn }) => turn === at));
  const own = more.filter((candidate) => !isTurned(candidate)).map(({ span }): Turning => ({ at: span.from, share: 0 }));
  return begunBy(speech, listened, [...turns, ...own].sort((a, b) => a.at - b.at), candidates.filter((candidate) => starts.includes(candidate) || more.includes(candidate)));
}

/** The same, by the names that begin exercises. */
function begunBy(speech: Speech, listened: Listened, turns: readonly Turning[], starts: readonly Candidate[]): Begun[] {
  const { words, candidates } = speech;
  const all = turnsWithNames(turns, starts, words.length);
  const titles = new Set<string>();
  return all.flatMap(({ at, share, begins }, place): Begun[] => {
    const until = all[place + 1]?.at ?? words.length;
    const meant = meantAt(listened, candidates, at, until);
    const named = begins ?? toldBy(meant);
    const isCounted = speech.statements.some(({ from }) => from >= at && from < until);
    if (!isCounted && (named === null ? until - at < FEW : named.passing && share < HEARD)) return [];
    const spoken = named === null ? spokenOf(meant, candidates, starts) : null;
    const name = spoken !== null && !titles.has(spoken.title) ? spoken : nameOf(named && variantOf(named.name, named.span, words, at, until), named !== null && named.span.from <= at + REACH && isTold(named, speech), meant, titles, words);
    if (titles.has(name.title) || (name.title.startsWith(NO_NAME) && share < TURNED && until - at < LED_OVER && place < all.length - 1)) return [];
    titles.add(name.title);
    return [{ turn: at, candidate: { ...(named ?? unnamed(at)), name } }];
  });
}
