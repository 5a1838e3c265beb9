import type { Token } from "../schemes/figures";
import { figureOf, isFigure, NAME } from "./stream";
import type { Role, Tagged } from "./tagger";

/** Weights and reps that were passed over, and that their neighbours give away: "the twelve with twenty kilos and the ten with twenty-two". */

/** What may stand behind a number that is told bare. */
const ENDS = /^(?:and|then|on|so|but|i|i'm|which|who|again|today|it|this|these|that|my|those|okay|right|now|because|first|second|third|fourth|last|with|very|clean|good|nice|was|for|each|every|had)$/;
/** Behind the last of several numbers it says that they are no reps. */
const NO_REPS = /^(?:kilos?|kgs?|kg|pounds?|lbs?|seconds?|secs?|minutes?|mins?|percent|sets?|rounds?|degrees?|metres|years?|weeks?|days?)$/;
const UNIT = /^(?:kilos?|kgs?|pounds?|lbs?)$/;
const ORDINAL = /^(?:first|second|third|fourth|fifth|last|final)$/;
/** What has an ordinal, "1" being "one": "second set I got". A small number right behind it is its own: "set three". */
const [THING, TOLD] = [/^(?:1|set|time|round|go)$/, /^(?:i|got|did|was|it|for)$/];
const OWN_NUMBER = 4;
/** What is not done today: of another day, of a plan, of somebody else. */
const ELSEWHERE = /(?:^| )(?:last (?:week|time|month|session|year|monday|tuesday|wednesday|thursday|friday|saturday|sunday)|yesterday|ago|used to|plan|planned|wanted|supposed|meant|he|she|they)(?: |$)/g;
const HERE = /(?:^| )(?:today|now|so|this|but|and i)(?: |$)/;
/** So many tokens around a number it may be said. */
const [SAID_BEFORE, SAID_BEHIND] = [10, 4];
const GOT = /^(?:got|managed|hit|did|done|made|it)$/;
const WITH = /^(?:with|at|on)$/;
const [MOST_REPS, LEAST_LOAD] = [50, 2.5];
/** So many tokens back a weight may be told whose reps these are. */
const LOAD_REACH = 14;
/** So many tokens are between the reps of one set and those of the next. */
const FURTHEST = 7;
/** Between the reps of one set and those of the next: "ten on the first one and then eight". */
const TO_NEXT = /^(?:on the (?:first|second|third)(?: (?:1|set))? )?(?:and |then )+$/;
/** So many numbers in a row are sets told one after the other: "twenty, twenty, seventeen". */
const IN_A_ROW = 3;

const isLoad = (role: Role | undefined): boolean => role === "load" || role === "ramp-load";
const isReps = (role: Role | undefined): boolean => role === "reps" || role === "ramp-reps";

class Reading {
  readonly roles: Map<number, Role>;

  constructor(private readonly tokens: readonly Token[], tags: readonly Tagged[]) {
    this.roles = new Map(tags.map(({ place, role }) => [place, role]));
  }

  text = (place: number): string => this.tokens[place]?.text ?? "";
  private stops = (place: number): boolean => this.tokens[place] === undefined || this.tokens[place]?.stop === true || this.text(place) === NAME;
  isBare = (place: number): boolean => this.stops(place + 1) || ENDS.test(this.text(place + 1));
  /** A number nobody has told a role, that may be the reps of a set. */
  isFree(place: number): boolean {
    const token = this.tokens[place];
    return token !== undefined && !this.roles.has(place) && token.value !== null && Number.isInteger(token.value) && token.value >= 1 && token.value <= MOST_REPS;
  }
  /** Is it told of another day, or planned? */
  isElsewhere(place: number): boolean {
    const said = (from: number, to: number): string => this.tokens.slice(Math.max(0, from), to).map(({ text }) => text).join(" ");
    const before = said(place - SAID_BEFORE, place);
    const found = [...before.matchAll(ELSEWHERE)].at(-1);
    return (found !== undefined && !HERE.test(before.slice(found.index + found[0].length - 1))) || /(?:^| )(?:last (?:week|time|month|year)|ago)(?: |$)/.test(said(place + 1, place + 1 + SAID_BEHIND));
  }
  value = (place: number): number => this.tokens[place]?.value ?? 0;
  /** The place with "the" and the like left behind. */
  private over = (place: number, step: 1 | -1): number => (/^(?:the|my|those|these|a)$/.test(this.text(place)) ? place + step : place);

  /** "One ninety for a triple", "then one single at eighty-five". */
  isTriple(place: number): boolean {
    if (!/^(?:single|double|triple)$/.test(this.text(place)) || this.roles.has(place)) return false;
    const isBehind = this.text(place - 1) === "a" && this.text(place - 2) === "for" && isLoad(this.roles.get(place - 3));
    return isBehind || (WITH.test(this.text(place + 1)) && isLoad(this.roles.get(this.over(place + 2, 1))));
  }

  /** "I got nine and nine": as many reps or fewer than those before. */
  isNextInRow(place: number): boolean {
    if (!this.isFree(place) || !this.isBare(place)) return false;
    const last = this.lastReps(place);
    const most = this.value(last);
    return last >= 0 && place - last <= FURTHEST && TO_NEXT.test(`${this.tokens.slice(last + 1, place).map(({ text }) => text).join(" ")} `) && this.value(place) <= most && this.value(place) >= most / 2;
  }

  /** "First set 15, second one I got 12": a bare number behind an ordinal and what has it. */
  isOfOrdinal(place: number): boolean {
    if (!this.isFree(place) || !this.isBare(place) || this.value(place) < 2) return false;
    let at = place - 1;
    while (place - at <= 4 && TOLD.test(this.text(at))) at -= 1;
    const isOwn = at === place - 1 && this.value(place) <= OWN_NUMBER;
    return THING.test(this.text(at)) && ORDINAL.test(this.text(at - 1)) && !isOwn;
  }

  /** "I got 20, 20, 17". */
  isInRun(place: number): boolean {
    if (!this.isFree(place)) return false;
    const isLink = (at: number): boolean => /^(?:and|then)$/.test(this.text(at)) && !this.stops(at);
    const isOne = (at: number): boolean => (this.isFree(at) || isReps(this.roles.get(at))) && this.value(at) >= 2;
    let [first, end, count] = [place, place, 1];
    for (let at = place - 1; isOne(at) || isLink(at); at -= 1) if (isOne(at)) [first, count] = [at, count + 1];
    for (let at = place + 1; isOne(at) || isLink(at); at += 1) if (isOne(at)) [end, count] = [at, count + 1];
    const isCount = Array.from({ length: end - first }, (_, step) => first + step).some((at) => isOne(at) && isOne(at + 1) && this.value(at + 1) === this.value(at) + 1);
    return count >= IN_A_ROW && !isCount && !NO_REPS.test(this.text(end + 1)) && /^(?:got|did|done|was|were|it's|reps|of)$/.test(this.text(first - 1));
  }

  /** "Eighty kilos, I pressed it six", "ninety, and I got five". */
  isOfLoad(place: number): boolean {
    if (!this.isFree(place) || !(this.isBare(place) || this.text(place + 1) === "times") || !GOT.test(this.text(place - 1)) || this.value(place) < 2) return false;
    for (let at = place - 1; at >= place - LOAD_REACH; at -= 1) {
      const role = this.roles.get(at);
      if (isLoad(role)) return true;
      if (role !== undefined && role !== "amrap") return false;
    }
    return false;
  }

  /** "The ten with 22 kilos": reps before a weight that has none behind it. */
  isBeforeLoad(place: number): boolean {
    if (!this.isFree(place) || !WITH.test(this.text(place + 1)) || !/^(?:the|and|then|got|did|for)$/.test(this.text(place - 1))) return false;
    const load = this.over(place + 2, 1);
    const behind = UNIT.test(this.text(load + 1)) ? load + 2 : load + 1;
    return isLoad(this.roles.get(load)) && !/^(?:for|of|by)$/.test(this.text(behind));
  }

  /** "Three reps with 47 and a half", "ten with the fours": a weight behind reps. */
  isLoadOfReps(place: number): boolean {
    const token = this.tokens[place];
    if (!token || this.roles.has(place) || !isFigure(token) || figureOf(token) < LEAST_LOAD) return false;
    const before = this.over(place - 1, -1);
    const reps = /^reps?$/.test(this.text(before - 1)) ? before - 2 : before - 1;
    return WITH.test(this.text(before)) && isReps(this.roles.get(reps)) && !/^(?:first|second|third|last)$/.test(this.text(place - 1)) && (this.isBare(place) || UNIT.test(this.text(place + 1)) || token.value === null);
  }

  private lastReps(place: number): number {
    for (let at = place - 1; at >= 0 && at >= place - FURTHEST; at -= 1) if (isReps(this.roles.get(at))) return at;
    return -1;
  }

  /** Is the figure told last one of the way up? */
  isRamp(place: number): boolean {
    for (let at = place - 1; at >= 0; at -= 1) {
      const role = this.roles.get(at);
      if (role !== undefined && (isLoad(role) || isReps(role))) return role.startsWith("ramp-");
    }
    return false;
  }
}

/**
 * The tags with those of figures that were passed over, in order.
 * @param tokens - of the whole speech; @param tags - what was heard
 */
export function withPassedOver(tokens: readonly Token[], tags: readonly Tagged[]): Tagged[] {
  const reading = new Reading(tokens, tags);
  tokens.forEach((_, place) => {
    const role = (base: "reps" | "load"): Role => (reading.isRamp(place) ? (`ramp-${base}` as const) : base);
    // A weight told before the triple tells whose day it is.
    if (reading.isTriple(place)) {
      reading.roles.set(place, role("reps"));
      return;
    }
    const isSet = reading.isNextInRow(place) || reading.isOfOrdinal(place) || reading.isInRun(place) || reading.isOfLoad(place) || reading.isBeforeLoad(place);
    if ((isSet || reading.isLoadOfReps(place)) && !reading.isElsewhere(place)) reading.roles.set(place, role(isSet ? "reps" : "load"));
  });
  const heard = new Set(tags.map(({ place }) => place));
  const passed = [...reading.roles].flatMap(([place, role]) => (heard.has(place) ? [] : [{ place, role }]));
  return [...tags, ...passed].sort((a, b) => a.place - b.place);
}
