import type { Lesson } from "../learning/read";
import { startsMarked } from "../learning/starts";
import { truthOf } from "../learning/truth";
import { withRoles } from "../heard";
import { keyOf, keyOfTitle } from "../names/lexicon";
import { holdingMarked, markedScene, ownersMarked } from "../owners/training";
import { kindOf } from "../owners/scene";
import { forSeveralIn, labelsOf } from "../roles/training";
import { figureOf, isFigure } from "../roles/stream";
import { isHeardAlone, phrasedAt } from "./inputs";

/** A marked transcript as train.py reads it: words and what is known of them, and what is true. */
export function rowFor(lesson: Lesson) {
  const { file, ready, marked, turns } = lesson;
  const { words, sentences, heard, candidates } = ready;
  const labels = labelsOf(lesson);
  const truth = truthOf(file);
  const known = withRoles(ready, labels);
  const scene = markedScene(turns, truth, known);
  const forSeveral = forSeveralIn(lesson);
  const holding = scene === null ? [] : holdingMarked(scene, ownersMarked(scene, truth, forSeveral, candidates), forSeveral);
  const figures = phrasedAt(heard);
  const places = figures.map(({ word }) => word);
  const starts = new Set(startsMarked(candidates, turns));
  const values = new Map(heard.tokens.filter(isFigure).map((token) => [token.at, figureOf(token)]));
  const begins = new Set(sentences.map(({ from }) => from));
  return {
    words: words.map(({ plain }) => plain), classes: heard.classes, pauses: words.map(({ pause }) => pause), values: words.map((_, at) => values.get(at) ?? null), begins: words.map((_, at) => begins.has(at)),
    figures: figures.map(({ word, fields }, at) => ({ at: word, fields, role: isHeardAlone(places, at, words) ? labels[at] : null })),
    names: candidates.map((candidate) => ({ from: candidate.span.from, to: candidate.span.to, goal: keyOf(candidate.name), thing: candidate.isThing, strength: candidate.strength, passing: candidate.passing, listed: candidate.listed, paired: candidate.paired, starts: starts.has(candidate) })),
    turns: marked.turns,
    exercises: turns.map(({ at, to }, place) => ({ at, goal: keyOfTitle(scene === null ? to : (truth[place]?.name ?? to)) })),
    statements: scene === null ? [] : known.statements.map((statement, at) => ({ at: statement.from, kind: kindOf(statement), value: JSON.stringify(statement.says), owners: holding[at] })),
  };
}
