import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { withPassedOver } from "../../../../shared/imports/roles/passed-over";
import { ROLES } from "../../../../shared/imports/roles/tagger";
import { tagged } from "./tagged";

/** What is added: "10 reps". */
function added(text: string): string[] {
  const { tokens, tags } = tagged(text);
  return withPassedOver(tokens, tags).flatMap(({ place, role }) => (tags.some((tag) => tag.place === place) ? [] : [`${tokens[place]?.text ?? ""} ${role}`]));
}

describe("figures that were passed over", () => {
  it.each<readonly [said: string, wanted: readonly string[]]>([
    // Reps
    ["one/load ninety for a triple", ["triple reps"]],
    ["seventy/ramp-load for three/ramp-reps and then one single at 85/ramp-load", ["single ramp-reps"]],
    ["one single at the top", []],
    ["i got nine/reps and nine okay", ["9 reps"]],
    ["ten/reps on the first one and then eight and eight i'm tired", ["8 reps", "8 reps"]],
    ["first set 15 second set 12 third set 10 lean forward", ["15 reps", "12 reps"]],
    ["and on the last one i got eleven and that", ["11 reps"]],
    ["three/sets sets i got 20 20 and 17 come up", ["20 reps", "20 reps", "17 reps"]],
    ["then eighty/load kilos i pressed it six times and", ["6 reps"]],
    ["with the eights/load to failure/amrap and i got sixteen which", ["16 reps"]],
    ["twelve/reps with twenty/load kilos and the ten with 22/load kilos", ["10 reps"]],
    ["forty/ramp-load for eight/ramp-reps then fifty/ramp-load and i did five and", ["5 ramp-reps"]],
    // Weights
    ["three/reps reps with 47 and a half", ["47.5 load"]],
    ["ten/reps with the fours very", ["4s load"]],
    ["eight/ramp-reps at 40 and", ["40 ramp-load"]],
    // Of another day, of a plan, of somebody else
    ["sixty/load kilos last week i got nine and", []],
    ["sixty/load kilos i got nine last week", []],
    ["sixty/load kilos the plan was 10 10 and 10 so", []],
    ["sixty/load kilos he got six and", []],
    ["sixty/load kilos last week nothing so today i got nine and", ["9 reps"]],
    // Other things
    ["ten/reps and then two minutes", []],
    ["ten/reps and five kilos", []],
    ["last set three and go", []],
    ["the last two would not go", []],
    ["i did 6 7 8 9 and", []],
    ["ten/reps with two in the tank", []],
    ["eight/reps at rpe 8 and", []],
  ])("%s", (said, wanted) => {
    expect(added(said)).toEqual(wanted);
  });

  it("keeps every tag that was heard, and tells each place once", () => {
    const word = fc.constantFrom("ten", "eight", "sixty", "and", "then", "i", "got", "first", "set", "with", "the", "last", "week", "for", "a", "triple", "kilos", "fours");
    const role = fc.constantFrom(...ROLES);
    fc.assert(fc.property(fc.array(fc.tuple(word, fc.option(role)), { maxLength: 25 }), (pieces) => {
      const { tokens, tags } = tagged(pieces.map(([said, as]) => (as === null || as === "none" ? said : `${said}/${as}`)).join(" ") || "x");
      const all = withPassedOver(tokens, tags);
      expect(tags.filter((tag) => !all.includes(tag))).toEqual([]);
      expect(new Set(all.map(({ place }) => place)).size).toBe(all.length);
    }));
  });
});
