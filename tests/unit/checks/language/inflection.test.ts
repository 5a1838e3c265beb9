import { expect, it } from "vitest";
import { verbForms } from "../../../../shared/checks/language/grammar/inflection";

it.each([
  ["round", ["round", "rounds", "rounded", "rounding"]],
  ["sag", ["sag", "sags", "sagged", "sagging"]],
  ["collapse", ["collapse", "collapses", "collapsed", "collapsing"]],
  ["carry", ["carry", "carries", "carried", "carrying"]],
  ["push", ["push", "pushes", "pushed", "pushing"]],
  ["bow", ["bow", "bows", "bowed", "bowing"]],
  ["buckle", ["buckle", "buckles", "buckled", "buckling"]],
])("the regular forms of %s", (stem, forms) => {
  expect(verbForms(stem)).toEqual(forms);
});
