import fc from "fast-check";
import type { Scheme, Tempo } from "../../../shared/training";

/** A decimal such as coaches write: whole, half or quarter. */
const quarters = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min: min * 4, max: max * 4 }).map((n) => n / 4).filter((n) => n > 0);

const load: fc.Arbitrary<NonNullable<Scheme["load"]>> = fc.oneof(
  fc.record({ value: quarters(1, 300), unit: fc.constantFrom("kg" as const, "lb" as const) }),
  fc.record({ value: quarters(1, 60), unit: fc.constantFrom("kg" as const, "lb" as const), perHand: fc.constant(true as const) }),
  fc.record({ value: quarters(1, 120), unit: fc.constant("%1RM" as const) }),
  fc.record({ value: fc.constant(null), unit: fc.constantFrom("bodyweight" as const, "band" as const) }),
  fc.record({ value: quarters(1, 60).chain((n) => fc.constantFrom(n, -n)), unit: fc.constantFrom("bodyweight+kg" as const, "bodyweight+lb" as const) }),
);

const figure = fc.integer({ min: 0, max: 12 });
const tempo: fc.Arbitrary<Tempo> = fc.oneof(
  fc.tuple(figure, figure, fc.oneof(figure, fc.constant("X" as const)), figure).filter((four) => four.some((one) => one !== 0)),
  fc.tuple(fc.option(fc.integer({ min: 1, max: 9 })), fc.option(fc.integer({ min: 1, max: 9 })), fc.option(fc.oneof(fc.integer({ min: 1, max: 9 }), fc.constant("X" as const))), fc.option(fc.integer({ min: 1, max: 9 })))
    .filter((four) => four.some((one) => one !== null)),
);

const reps = fc.tuple(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 0, max: 20 })).map(([repsMin, more]) => ({ repsMin, repsMax: repsMin + more }));
const sets = fc.integer({ min: 1, max: 40 });
const ladder = fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 2, maxLength: 8 }).map((rungs) => ({ sets: rungs.length, reps: rungs }));
const amrap = fc.constant({ amrap: true as const });

const work: fc.Arbitrary<Scheme> = fc.oneof(
  fc.tuple(sets, reps).map(([n, r]) => ({ sets: n, ...r })),
  fc.tuple(sets, reps, amrap).map(([n, r, a]) => ({ sets: n, ...r, ...a })),
  ladder,
  fc.tuple(ladder, amrap).map(([l, a]) => ({ ...l, ...a })),
  fc.tuple(sets, amrap).map(([n, a]) => ({ sets: n, ...a })),
  fc.tuple(sets, amrap, fc.integer({ min: 1, max: 900 })).map(([n, a, seconds]) => ({ sets: n, ...a, seconds })),
  fc.tuple(amrap, fc.integer({ min: 1, max: 3600 })).map(([a, seconds]) => ({ ...a, seconds })),
  fc.tuple(sets, fc.integer({ min: 1, max: 900 })).map(([n, seconds]) => ({ sets: n, seconds })),
  fc.integer({ min: 1, max: 3600 }).map((seconds) => ({ seconds })),
  fc.tuple(sets, quarters(1, 500)).map(([n, meters]) => ({ sets: n, meters })),
  fc.tuple(fc.integer({ min: 1, max: 60 }), reps).map(([emomMinutes, r]) => ({ emomMinutes, ...r })),
  fc.tuple(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 60 })).map(([emomMinutes, seconds]) => ({ emomMinutes, seconds })),
);

const effort: fc.Arbitrary<Scheme> = fc.oneof(
  fc.constant({}), fc.integer({ min: 2, max: 20 }).map((halves) => ({ rpe: halves / 2 })), fc.integer({ min: 0, max: 10 }).map((rir) => ({ rir })), fc.integer({ min: 14, max: 20 }).map((halves) => ({ rpe: halves / 2, rir: 10 - halves / 2 })),
);

const extras: fc.Arbitrary<Scheme> = fc.record(
  { load, tempo, restSeconds: fc.integer({ min: 0, max: 900 }), dropSets: fc.integer({ min: 1, max: 5 }), eachSide: fc.constant(true as const), group: fc.tuple(fc.constantFrom("A", "B", "C", "D", "E"), fc.integer({ min: 1, max: 9 })).map(([letter, n]) => `${letter}${n}`) },
  { requiredKeys: [] },
);

/** Any scheme a set line can state. */
export const anyScheme: fc.Arbitrary<Scheme> = fc.tuple(work, effort, extras).map(([one, two, three]) => {
  const { restSeconds, ...others } = three;
  // the rest of an EMOM is what is left of each minute
  return { ...one, ...two, ...others, ...(restSeconds === undefined || one.emomMinutes !== undefined ? {} : { restSeconds }) };
});
