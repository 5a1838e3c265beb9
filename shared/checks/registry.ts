import type { Rule } from "./define-rule";
import { audiencePosition } from "./rules/structure/audience-position";
import { bothSides } from "./rules/structure/both-sides";
import { closingShot } from "./rules/structure/closing-shot";
import { closing } from "./rules/structure/closing";
import { coolDown } from "./rules/structure/cool-down";
import { exerciseOrder } from "./rules/structure/exercise-order";
import { minWarmUpMinutes } from "./rules/structure/min-warm-up-minutes";
import { opening } from "./rules/structure/opening";
import { rampUpSets } from "./rules/structure/ramp-up-sets";
import { sessionOverSlot } from "./rules/structure/session-over-slot";
import { warmUpJoints } from "./rules/structure/warm-up-joints";
import { warmUpRule } from "./rules/structure/warm-up";
import { maxLoadJump } from "./rules/dose/max-load-jump";
import { minRest } from "./rules/dose/min-rest";
import { noFailureAlone } from "./rules/dose/no-failure-alone";
import { setLine } from "./rules/dose/set-line";
import { unreadableSetLine } from "./rules/dose/unreadable-set-line";
import { avoid } from "./rules/words/avoid";
import { caution } from "./rules/words/caution";
import { maxCueWords } from "./rules/words/max-cue-words";
import { noContradictoryCues } from "./rules/words/no-contradictory-cues";
import { noDisputedClaim } from "./rules/words/no-disputed-claim";
import { noUnexplainedJargon } from "./rules/words/no-unexplained-jargon";
import { noUnsafeCue } from "./rules/words/no-unsafe-cue";
import { saidNumbers } from "./rules/words/said-numbers";
import { wordsOverClip } from "./rules/words/words-over-clip";
import { bystanders } from "./rules/film/bystanders";
import { cueAngle } from "./rules/film/cue-angle";
import { exerciseShot } from "./rules/film/exercise-shot";
import { maxVideoLength } from "./rules/publishing/max-video-length";
import { minChapterSeconds } from "./rules/publishing/min-chapter-seconds";
import { partnerDisclosure } from "./rules/publishing/partner-disclosure";
import { publishDate } from "./rules/publishing/publish-date";

/** Every rule, in the order they are explained to people. */
export const RULES: readonly Rule[] = [
  // structure
  audiencePosition, bothSides, closingShot, closing, coolDown, exerciseOrder, minWarmUpMinutes, opening, rampUpSets, sessionOverSlot, warmUpJoints, warmUpRule,
  // dose
  maxLoadJump, minRest, noFailureAlone, setLine, unreadableSetLine,
  // words
  avoid, caution, maxCueWords, noContradictoryCues, noDisputedClaim, noUnexplainedJargon, noUnsafeCue, saidNumbers, wordsOverClip,
  // film
  bystanders, cueAngle, exerciseShot,
  // publishing
  maxVideoLength, minChapterSeconds, partnerDisclosure, publishDate,
];
