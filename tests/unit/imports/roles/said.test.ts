import { describe, expect, it } from "vitest";
import { saidBy } from "../../../../shared/imports/roles/said";
import { tagged } from "./tagged";

/** What marked words say: "three/sets". */
function said(text: string): object[] {
  const { tokens, tags } = tagged(text);
  return saidBy(tokens, tags).map(({ says }) => says);
}

describe("saidBy", () => {
  it.each<readonly [string, readonly object[]]>([
    ["three/sets sets of eight/reps to ten/reps-high", [{ sets: 3 }, { repsMin: 8, repsMax: 10 }]],
    ["one/load ninety for a triple and then down", [{ load: { value: 190, unit: "kg" } }, { repsMin: 3, repsMax: 3 }]],
    ["a bench set at 30°/load and feet at ninety/reps degrees", []],
    ["eight/reps kilos only", [{ load: { value: 8, unit: "kg" } }]],
    ["i got nine/reps and nine okay carries", [{ repsMin: 9, repsMax: 9 }, { repsMin: 9, repsMax: 9 }]],
    ["ten/reps on the first one and then eight and eight i'm tired", [{ repsMin: 10, repsMax: 10 }, { repsMin: 8, repsMax: 8 }, { repsMin: 8, repsMax: 8 }]],
    ["ten/reps and then two minutes", [{ repsMin: 10, repsMax: 10 }]],
    ["ten/reps and five kilos", [{ repsMin: 10, repsMax: 10 }]],
    ["ten/reps and twelve and again", [{ repsMin: 10, repsMax: 10 }]],
    ["i did four/sets sets of no wait it's three/sets sets of eight/reps", [{ sets: 3 }, { repsMin: 8, repsMax: 8 }]],
    ["i did four/sets sets of no", [{ sets: 4 }]],
    ["two/sets sets of fifteen/reps no sorry two/sets sets of twenty/reps", [{ sets: 2 }, { repsMin: 20, repsMax: 20 }]],
    ["i did two/sets sets no i tell a lie three/sets sets of that", [{ sets: 3 }]],
    ["three/sets sets of eight/reps no rest two/sets sets of ten/reps", [{ sets: 3 }, { repsMin: 8, repsMax: 8 }, { sets: 2 }, { repsMin: 10, repsMax: 10 }]],
    ["one/tempo second up one/tempo second hold at the top three/tempo seconds down and", [{ tempo: [3, 0, 1, 1] }]],
    ["rest two/rest minutes", [{ restSeconds: 120 }]],
    ["rest two/rest", [{ restSeconds: 120 }]],
    ["two/rest to three/rest minutes", [{ restSeconds: 120 }]],
    ["two/rest minutes thirty/rest", [{ restSeconds: 150 }]],
    ["sixty/load pounds", [{ load: { value: 60, unit: "lb" } }]],
    ["the sixteens/load", [{ load: { value: 16, unit: "kg", perHand: true } }]],
    ["twelve/load kilo dumbbells", [{ load: { value: 12, unit: "kg", perHand: true } }]],
    ["one of the twelve/load kilo dumbbells", [{ load: { value: 12, unit: "kg" } }]],
    ["i keep one of the twelves/load and", [{ load: { value: 12, unit: "kg" } }]],
    ["carrying both 16/load in the rack", [{ load: { value: 16, unit: "kg", perHand: true } }]],
    ["both hands on the 16/load", [{ load: { value: 16, unit: "kg" } }]],
    ["ten/load kilos in each/hand hand", [{ load: { value: 10, unit: "kg", perHand: true } }]],
    ["bodyweight plus ten/load kilos", [{ load: { value: 10, unit: "bodyweight+kg" } }]],
    ["eighty/load percent", [{ load: { value: 80, unit: "%1RM" } }]],
    ["rpe eight/effort", [{ rpe: 8 }]],
    ["two/effort in the tank", [{ rir: 2 }]],
    ["tempo three/tempo one/tempo one/tempo zero/tempo", [{ tempo: [3, 1, 1, 0] }]],
    ["three/tempo seconds down one/tempo second up", [{ tempo: [3, 0, 1, 0] }]],
    ["four/tempo seconds down", [{ tempo: [4, null, null, null] }]],
    ["a triple/ramp-reps", [{ repsMin: 3, repsMax: 3 }]],
    ["ninety/sets", []],
  ])("%s", (text, wanted) => {
    expect(said(text)).toEqual(wanted);
  });
});
