import { blockName } from "../../../episode";
import { setCount } from "../../../training";
import { duration, exerciseOf, workingSets } from "../../blocks";
import { defineBlockRule } from "../../define-rule";
import { writes } from "../../set-remedy";

export const minJumpRest = defineBlockRule({
  meta: {
    id: "min-jump-rest", version: 1, subject: "dose", level: "consider", moment: "before filming",
    summary: "Jumps have at least a minute of rest between sets.",
    why: "A jump is only worth its landing while it is quick. Short of breath, people land hard and late.",
    source: { title: "NSCA Essentials of Strength Training and Conditioning, 4th ed., 2016 (from memory)", at: "plyometrics: rest five to ten times the work; a minute is common practice" },
    defaults: { seconds: 60 },
    messages: { short: "{name}: {rest} of rest between sets of jumps, at least {min} expected. Rest longer." },
  },
  check({ block }, { seconds }, report) {
    if (exerciseOf(block)?.family !== "plyometric") return;
    for (const { set, scheme } of workingSets(block)) {
      if (scheme.restSeconds === undefined || scheme.restSeconds >= seconds || setCount(scheme) < 2 || scheme.group !== undefined) continue;
      report({ block, line: set, message: "short", data: { name: blockName(block), rest: duration(scheme.restSeconds), min: duration(seconds) }, remedies: writes(set, { ...scheme, restSeconds: seconds }) });
    }
  },
});
