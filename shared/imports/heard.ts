import { isTeaching } from "./lines/kind";
import type { Models } from "./learning/models";
import type { RowModel } from "./learning/row-model";
import type { Mention } from "./names/find";
import { candidatesIn, type Candidate } from "./order/candidates";
import { indexed, sentenceAt, type Indexed, type Placed, type Speech } from "./order/speech";
import { hear, type Heard } from "./roles/hear";
import { saidBy } from "./roles/said";
import { rolesOf, rowOf, taggedBy, withContext, type Row, type Tagged } from "./roles/tagger";
import type { Statement } from "./schemes/statement";
import { rowAgain, startsIn } from "./starts/starts";
import { inOrder, turnsIn } from "./turns/turns";
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
  // A tempo that a phrase tells in full is taken from it, where its figures were heard in part.
  const tempos = phrases.filter((phrase) => phrase.says.tempo?.every((part) => part !== null) === true && figures.some((figure) => isTempo(figure) && figure.rank !== "whole" && overlap(figure, phrase)));
  const phrased = phrases.filter(({ says }) => says.emomMinutes !== undefined || says.dropSets !== undefined || Object.keys(says).length === 0);
  return [...phrased, ...tempos, ...figures.filter((figure) => !isTempo(figure) || !tempos.some((tempo) => overlap(figure, tempo)))].sort((a, b) => a.from - b.from).map((statement) => ({ ...statement, sentence: numberOf(statement.from) }));
}

/** The models that are needed until the running order is known. */
export type ReadingModels = Omit<Models, "owners" | "assembly">;

/** Speech after its figures were read for the first time. */
export interface FirstReading {
  readonly heard: Heard;
  readonly row: Row;
  readonly roles: readonly number[];
  readonly speech: Indexed;
}

/**
 * @param skip - hesitations and sounds
 * @param classes - parts of speech, one a word
 */
export function firstReading(words: readonly Word[], sentences: readonly Span[], mentions: readonly Mention[], skip: ReadonlySet<number>, classes: readonly string[], first: RowModel): FirstReading {
  const heard = hear(words, sentences, mentions, skip, classes);
  const row = rowOf(heard);
  const roles = rolesOf(row, first);
  const said = sentences.map((sentence) => plainOf(words, sentence, skip));
  const numberOf = (word: number): number => sentenceAt({ sentences }, word);
  const speech: Speech = {
    words, sentences, said,
    candidates: candidatesIn(words, sentences, mentions, classes),
    statements: statementsOf(heard, taggedBy(row, roles), sentences),
    phrases: heard.phrases.map((phrase) => ({ ...phrase, sentence: numberOf(phrase.from) })),
    starts: new Set(), turns: new Map(), zones: [],
    silences: sentences.map(({ to }) => words[to]?.pause ?? 0),
    teaches: said.map(isTeaching),
  };
  return { heard, row, roles, speech: indexed(speech) };
}

/** The words at which exercises of the session begin. */
export const beginsOf = (starts: ReadonlySet<Candidate>): number[] => inOrder(starts).map(({ span }) => span.from);

/** The speech with its figures as they are understood at second sight. */
export const speechAgain = (speech: Speech, heard: Heard, row: Row, roles: readonly number[]): Indexed => indexed({ ...speech, statements: statementsOf(heard, taggedBy(row, roles), speech.sentences) });

/** The speech with names and figures understood. Both are read twice, the second time knowing what was made of the others. */
export function speechOf(words: readonly Word[], sentences: readonly Span[], mentions: readonly Mention[], skip: ReadonlySet<number>, classes: readonly string[], models: ReadingModels): Speech {
  const { heard, row, roles, speech } = firstReading(words, sentences, mentions, skip, classes, models.first);
  const first = startsIn(speech, models.starts);
  const again = withContext(row, heard, roles, beginsOf(first));
  const known = speechAgain(speech, heard, again, rolesOf(again, models.roles));
  const starts = startsIn(known, models.startsAgain, rowAgain(known, first));
  const turns = turnsIn(known, starts, models.turns);
  const begun = { ...known, starts, turns };
  return { ...begun, zones: zonesIn(begun, models.zones) };
}
