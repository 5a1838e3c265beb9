import { bucket, worded } from "../learning/feature-names";
import type { Ordered } from "../schemes/compose";
import type { Span } from "../types";
import { plainIn } from "../source/words";
import { APART, claimOf } from "./claims";
import { OWN_SETS, type Reckoned, type Scene } from "./scene";
import type { Turned } from "./turned";

/** What speaks for a figure holding for an exercise. */

const together = /\b(?:super ?sets?|pairs?|back to back|together|circuit|giant set|tri ?set|rounds?|straight into|followed by|combo|complex)\b/;

/** Exercises whose names are no further apart are told in one breath. In words. */
const BREATH = 15;

/** The exercises that are named in one breath with this one, itself among them, by their numbers. */
export function groupOf({ exercises }: Scene, home: number): number[] {
  if (home < 0) return [];
  const near = (a: number, b: number): boolean => (exercises[b]?.at ?? Infinity) - (exercises[a]?.at ?? -Infinity) <= BREATH;
  let [first, last] = [home, home];
  while (first > 0 && near(first - 1, first)) first -= 1;
  while (last + 1 < exercises.length && near(last, last + 1)) last += 1;
  return Array.from({ length: last - first + 1 }, (_, at) => first + at);
}

/** The mentions that can only be of one exercise near a figure's home. */
const meantNear = ({ named }: Reckoned, home: number): { readonly mention: Span; readonly exercise: number }[] => named.flatMap(({ mention, of }) => {
  const close = of.length === 1 ? of : of.filter((place) => Math.abs(place - Math.max(0, home)) <= APART);
  const [only] = close;
  return close.length === 1 && only !== undefined ? [{ mention, exercise: only }] : [];
});

/** Which exercise of a group a figure is of, by the name that claims it or was said last, else by its turn among its like. */
export function memberFor(scene: Scene, all: Reckoned, at: number, group: readonly number[]): number | null {
  const statement = scene.statements[at] as Ordered;
  const meant = meantNear(all, all.homes[at] ?? -1).filter(({ exercise }) => group.includes(exercise));
  const away = ({ from, to }: Span): number => (from > statement.to ? from - statement.to : statement.from - to);
  const [claimed] = meant.filter(({ mention }) => claimOf(statement, mention, scene.words) !== null).sort((a, b) => away(a.mention) - away(b.mention));
  if (claimed) return claimed.exercise;
  const listEnd = (scene.exercises[group.at(-1) ?? 0]?.at ?? 0) + LIST_END;
  const since = meant.findLast(({ mention }) => mention.from > listEnd && mention.from < statement.from);
  if (since) return since.exercise;
  const alike = all.kinds.flatMap((kind, index) => (kind === all.kinds[at] && group.includes(all.homes[index] ?? -1) ? [index] : []));
  return alike.length === group.length ? (group[alike.indexOf(at)] ?? null) : null;
}

/** A list of names ends so many words after the last of them begins. */
const LIST_END = 2;

/** The features of each exercise for one figure. */
export function featuresFor(scene: Scene, all: Reckoned, at: number): string[][] {
  const { kinds, homes, said } = all;
  const { exercises, statements, words, zoneOf } = scene;
  const statement = statements[at] as Ordered;
  const [kind, home] = [kinds[at] ?? "", homes[at] ?? -1];
  const base = kind.replace(/^(?:all|ramp) /, "");
  const value = JSON.stringify(statement.says);
  const zone = zoneOf(statement.sentence);
  const meant = meantNear(all, home);
  const claims = meant.flatMap(({ mention, exercise }) => {
    const claim = claimOf(statement, mention, words);
    return claim === null ? [] : [{ exercise, claim }];
  });
  const lastNamed = meant.findLast(({ mention }) => mention.from < statement.from);
  const nextNamed = meant.find(({ mention }) => mention.from > statement.to);
  // Exercises in a row that do not say this themselves: what is said once is said for all of them.
  const others = (what: string, place: number): readonly number[] => (said.get(what)?.get(place) ?? []).filter((other) => other !== at);
  const says = (place: number): boolean => others(base, place).length > 0;
  const counts = (place: number): boolean => others(OWN_SETS, place).length > 0;
  // The only rounds, or the only weight, that are told hold for more than those of one group among others.
  const alike = kinds.flatMap((other, index) => (other.replace(/^all /, "") === base ? [index] : []));
  const values = new Set(alike.map((index) => JSON.stringify(statements[index]?.says))).size;
  const many = values === 1 ? "one" : values === 2 ? "two" : "more";
  const isAll = kind.startsWith("all ");
  const rounds = kinds.flatMap((other, index) => (index !== at && other === kind && JSON.stringify(statements[index]?.says) !== value ? [homes[index] ?? -1] : []));
  const [hereBefore, hereAfter] = [others(base, home).some((other) => other < at), others(base, home).some((other) => other > at)];
  const silentRun = (place: number, is: (between: number) => boolean): boolean => {
    const [low, high] = [Math.min(place, home), Math.max(place, home)];
    for (let between = Math.max(0, low); between <= high; between += 1) if (between !== home && is(between)) return false;
    return true;
  };
  const around = [-4, -3, -2, -1].map((step) => worded(words[statement.from + step]?.plain ?? "|"));
  const after = [1, 2, 3, 4].map((step) => worded(words[statement.to + step]?.plain ?? "|"));
  const near = plainIn(words, statement.from - 12, statement.to + 12).join(" ");
  const isTogether = together.test(near);
  const next = exercises[home + 1];
  const toNext = next ? bucket(next.turn - statement.to, [3, 8, 15, 30, 60]) : "none";
  const toName = next ? bucket(next.at - statement.to, [3, 8, 15, 30, 60]) : "none";
  const since = home < 0 ? "none" : bucket(statement.from - (exercises[home]?.at ?? 0), [0, 8, 20, 40, 80]);
  const group = groupOf(scene, home);
  // Of exercises told in one breath the first figure of a kind is the first one's, the second the second's.
  const inGroup = alike.filter((index) => group.includes(homes[index] ?? -1));
  const ordinal = `${inGroup.indexOf(at)}/${Math.min(4, inGroup.length)}`;
  const listEnd = group.length > 1 ? (exercises[group.at(-1) ?? 0]?.at ?? 0) + LIST_END : Infinity;
  const namedSince = meant.findLast(({ mention }) => mention.from > listEnd && mention.from < statement.from);
  return exercises.map((exercise, place) => {
    const member = group.indexOf(place);
    const told = namedSince === undefined ? "none" : namedSince.exercise === place ? "it" : "other";
    const off = Math.max(-3, Math.min(3, place - home));
    const o = home < 0 ? `first${Math.min(2, place)}` : String(off);
    const own = others(base, place);
    const twin = own.some((other) => JSON.stringify(statements[other]?.says) === value);
    const has = own.length === 0 ? "none" : twin ? "twin" : "other";
    const claim = claims.find((each) => each.exercise === place)?.claim ?? (claims.length > 0 ? "another" : "none");
    const isBreath = place !== home && exercises[home]?.part.pair !== null && exercises[home]?.part.pair === exercise.part.pair && home >= 0;
    const gap = place === home ? "home" : bucket(Math.abs((exercise.at) - (exercises[Math.max(0, home)]?.at ?? 0)), [6, 15, 40, 100]);
    const isLast = lastNamed?.exercise === place;
    const isNext = nextNamed?.exercise === place;
    const order = `${isLast ? "last" : ""}${isNext ? "next" : ""}`;
    const works = ["repsMin", "seconds", "meters", "ramp repsMin", "ramp seconds", "ramp meters"].some((what) => (said.get(what)?.get(place) ?? []).length > 0);
    const counted = ["sets", "ramp sets"].some((what) => (said.get(what)?.get(place) ?? []).length > 0);
    const [run, uncounted] = [silentRun(place, says), silentRun(place, counts)];
    const side = place < home ? "before" : place > home ? "after" : "home";
    const equipment = exercise.part.exercise === null ? "unknown" : exercise.part.exercise.equipment.some((each) => ["barbell", "dumbbell", "kettlebell", "machine", "cable", "trap bar", "sandbag", "medicine ball"].includes(each)) ? "weight" : "none";
    const isBroken = rounds.some((round) => (place > home ? round > home && round <= place : round >= place && round < home));
    const out = [
      `group=${kind} ${group.length} ${member} ${ordinal}`, `group=${kind} ${member >= 0} ${told} ${claim}`, `group=${group.length > 1} ${member} ${ordinal} ${told}`, `group=${kind} ${member} ${told} ${ordinal}`,
      `values=${kind} ${many} ${side}`, `values=${kind} ${many} ${side} ${uncounted} ${run}`, `values=${kind} ${many} ${zone} ${equipment} ${has}`, `broken=${isAll} ${isBroken} ${side}`, `broken=${kind} ${isBroken} ${side} ${run} ${many}`,
      `run=${kind} ${side} ${run}`, `run=${kind} ${side} ${run} ${uncounted} ${isTogether}`, `run=${kind} ${o} ${run} ${hereBefore}`, `uncounted=${kind} ${side} ${uncounted}`, `run=${kind} ${side} ${run} ${works}`, `run=${kind} ${zone} ${run} ${uncounted}`,
      `k=${kind} ${o}`, `has=${kind} ${o} ${has}`, `claim=${kind} ${claim}`, `claim=${claim} ${o}`, `breath=${kind} ${isBreath}`, `gap=${kind} ${o} ${gap}`, `order=${kind} ${order} ${o}`, `order=${order}`,
      `together=${kind} ${isTogether} ${o}`, `next=${kind} ${o} ${toNext}`, `name=${o} ${toName}`, `since=${kind} ${o} ${since}`, `since=${o} ${since} ${toNext}`, `zone=${zone} ${o}`, `zone=${zone} ${kind} ${o}`, `hereb=${kind} ${o} ${hereBefore} ${has}`, `herea=${kind} ${o} ${hereAfter} ${has}`,
      `works=${kind} ${o} ${works}`, `counted=${kind} ${o} ${counted} ${has}`, `equip=${kind} ${o} ${equipment}`, `end=${o} ${home === exercises.length - 1}`, `many=${kind} ${o} ${bucket(exercises.length, [2, 4, 6])}`,
      `near=${kind} ${o} ${bucket(lastNamed ? statement.from - lastNamed.mention.to : 99, [3, 10, 30])} ${isLast}`, `far=${kind} ${o} ${bucket(nextNamed ? nextNamed.mention.from - statement.to : 99, [3, 10, 30])} ${isNext}`,
    ];
    around.forEach((word, step) => out.push(`b${4 - step}=${base} ${word} ${o}`, `b=${word} ${o}`));
    after.forEach((word, step) => out.push(`a${step + 1}=${base} ${word} ${o}`, `a=${word} ${o}`));
    return out;
  });
}

/** The way from one exercise to the next, for a figure. */
export const stepsFor = ({ exercises }: Scene, kind: string): string[] => exercises.map((exercise, at) => {
  if (at === 0) return "";
  const before = exercises[at - 1] as Turned;
  return `${kind} ${exercise.part.pair !== null && exercise.part.pair === before.part.pair ? "pair" : bucket(exercise.at - before.at, [15, 40, 100])}`;
});
