import type { RowModels } from "./learning/models";
import { rolesHeard, turnsHeard, type Listened } from "./listener/listen";
import { namesIn, type Mention } from "./names/find";
import { begunIn } from "./order/begun";
import { candidatesIn, type Candidate } from "./order/candidates";
import { indexed, sentenceAt, type Indexed, type Placed, type Speech } from "./order/speech";
import { hear, type Heard } from "./roles/hear";
import { saidBy } from "./roles/said";
import { rolesOf, rowOf, taggedBy, withContext, type Row, type Tagged } from "./roles/tagger";
import { isRemark, type Statement } from "./schemes/statement";
import { sentencesIn } from "./sentences/boundaries";
import { inOneBreath, splitAtNames } from "./sentences/split-at-names";
import { wordClasses } from "./sentences/word-classes";
import type { Span, Word } from "./types";
import { zonesIn } from "./zones/zones";

/** Speech heard for names and figures, before its running order is known. */

const plainOf = (words: readonly Word[], { from, to }: Span, skip: ReadonlySet<number>): string =>
  words.slice(from, to).flatMap(({ plain }, at) => (plain === "" || skip.has(from + at) ? [] : [plain])).join(" ");

/** Figures by what they mean; "every minute", drop sets and plates by phrase. Each with its sentence. */
function statementsOf({ tokens, phrases }: Heard, tags: readonly Tagged[], sentences: readonly Span[]): Placed[] {
  const numberOf = (word: number): number => sentenceAt({ sentences }, word);
  const figures = saidBy(tokens, tags);
  const isTempo = (statement: Statement): boolean => statement.says.tempo !== undefined;
  const overlap = (a: Statement, b: Statement): boolean => a.from <= b.to && b.from <= a.to;
  // A tempo that a phrase tells in full is taken from it, unless its figures were heard in full as well.
  const tempos = phrases.filter((phrase) => phrase.says.tempo?.every((part) => part !== null) === true && !figures.some((figure) => isTempo(figure) && figure.rank === "whole" && overlap(figure, phrase)));
  const phrased = phrases.filter((phrase) => phrase.says.emomMinutes !== undefined || phrase.says.dropSets !== undefined || isRemark(phrase));
  // A rest that a phrase tells of all exercises is kept where its figure was passed over.
  const rests = phrases.filter((phrase) => phrase.about === "circuit" && phrase.says.restSeconds !== undefined && !figures.some((figure) => overlap(figure, phrase))).map((phrase): Statement => ({ ...phrase, about: "working" }));
  return [...phrased, ...rests, ...tempos, ...figures.filter((figure) => !tempos.some((tempo) => overlap(figure, tempo)))].sort((a, b) => a.from - b.from).map((statement) => ({ ...statement, sentence: numberOf(statement.from) }));
}

/** Speech made ready to be understood. */
export interface Prepared {
  readonly words: readonly Word[];
  readonly sentences: readonly Span[];
  readonly mentions: readonly Mention[];
  /** Hesitations and sounds. */
  readonly skip: ReadonlySet<number>;
  readonly heard: Heard;
  readonly row: Row;
  readonly candidates: readonly Candidate[];
  /** The sentences' plain words. */
  readonly said: readonly string[];
}

/** Speech cut into sentences. @param classes - parts of speech, one a word */
function inSentences(words: readonly Word[], sentences: readonly Span[], mentions: readonly Mention[], skip: ReadonlySet<number>, classes: readonly string[]): Prepared {
  const heard = hear(words, sentences, mentions, skip, classes);
  return { words, sentences, mentions, skip, heard, row: rowOf(heard), candidates: candidatesIn(words, sentences, mentions, classes), said: sentences.map((sentence) => plainOf(words, sentence, skip)) };
}

/** @param skip - hesitations and sounds */
export function prepared(words: readonly Word[], skip: ReadonlySet<number>): Prepared {
  const mentions = namesIn(words, skip);
  return inSentences(words, splitAtNames(words, sentencesIn(words, inOneBreath(words, mentions), false), mentions), mentions, skip, wordClasses(words));
}

/** The same speech in other sentences. */
export const cutInto = ({ words, mentions, skip, heard }: Prepared, sentences: readonly Span[]): Prepared => inSentences(words, sentences, mentions, skip, heard.classes);

/** The speech with the roles of its figures, by their numbers; what it is made of is not known yet. */
export function withRoles({ words, sentences, heard, row, candidates, said }: Prepared, roles: readonly number[]): Indexed {
  const numberOf = (word: number): number => sentenceAt({ sentences }, word);
  return indexed({
    words, sentences, said, candidates,
    statements: statementsOf(heard, taggedBy(row, roles), sentences),
    phrases: heard.phrases.map((phrase) => ({ ...phrase, sentence: numberOf(phrase.from) })),
    begun: [], zones: [], silences: sentences.map(({ to }) => words[to]?.pause ?? 0),
  });
}

/** The models that are needed until the running order is known. */
export type ReadingModels = Omit<RowModels, "assembly">;

/** The speech with its figures, exercises and parts understood. */
export function speechOf(ready: Prepared, listened: Listened, models: ReadingModels): Speech {
  const { heard, row } = ready;
  const turns = turnsHeard(listened);
  const again = withContext(row, heard, rolesOf(row, models.first), turns.map(({ at }) => at));
  const words = again.places.map((place) => heard.tokens[place]?.at ?? 0);
  const known = withRoles(ready, rolesOf(again, models.roles, rolesHeard(listened, words, ready.words)));
  const begun = begunIn(known, listened, turns);
  return { ...known, begun, zones: zonesIn({ ...known, begun }, models.zones) };
}
