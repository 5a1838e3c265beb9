import type { Rule } from "./define-rule";
import { audienceLandings } from "./rules/structure/audience-landings";
import { balanceSupport } from "./rules/structure/balance-support";
import { maxWarmUpHold } from "./rules/structure/max-warm-up-hold";
import { minCoolDownMinutes } from "./rules/structure/min-cool-down-minutes";
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
import { alternate } from "./rules/structure/alternate";
import { changeFromLast } from "./rules/structure/change-from-last";
import { closingLast } from "./rules/structure/closing-last";
import { coolDownLast } from "./rules/structure/cool-down-last";
import { heavyFirst } from "./rules/structure/heavy-first";
import { noCoreBeforeSpineLoad } from "./rules/structure/no-core-before-spine-load";
import { noRepeatedExercise } from "./rules/structure/no-repeated-exercise";
import { openingFirst } from "./rules/structure/opening-first";
import { powerFirst } from "./rules/structure/power-first";
import { warmUpFirst } from "./rules/structure/warm-up-first";
import { maxLoadJump } from "./rules/dose/max-load-jump";
import { minRest } from "./rules/dose/min-rest";
import { noFailureAlone } from "./rules/dose/no-failure-alone";
import { setLine } from "./rules/dose/set-line";
import { unreadableSetLine } from "./rules/dose/unreadable-set-line";
import { effortAtPercent } from "./rules/dose/effort-at-percent";
import { maxBeginnerEffort } from "./rules/dose/max-beginner-effort";
import { maxAudienceEffort } from "./rules/dose/max-audience-effort";
import { minJumpRest } from "./rules/dose/min-jump-rest";
import { maxJumpContacts } from "./rules/dose/max-jump-contacts";
import { maxMuscleSets } from "./rules/dose/max-muscle-sets";
import { maxReturningVolume } from "./rules/dose/max-returning-volume";
import { maxSetJump } from "./rules/dose/max-set-jump";
import { maxTeenLoad } from "./rules/dose/max-teen-load";
import { maxWorkInMinute } from "./rules/dose/max-work-in-minute";
import { oneUnit } from "./rules/dose/one-unit";
import { repsAtPercent } from "./rules/dose/reps-at-percent";
import { avoid } from "./rules/words/avoid";
import { askAProfessional } from "./rules/words/ask-a-professional";
import { avoidRemedy } from "./rules/words/avoid-remedy";
import { bothSidesSaid } from "./rules/words/both-sides-said";
import { breathingPhase } from "./rules/words/breathing-phase";
import { maxBreathSeconds } from "./rules/words/max-breath-seconds";
import { maxReadingGrade } from "./rules/words/max-reading-grade";
import { noRepeatedSentence } from "./rules/words/no-repeated-sentence";
import { say } from "./rules/words/say";
import { caution } from "./rules/words/caution";
import { maxCueWords } from "./rules/words/max-cue-words";
import { noContradictoryCues } from "./rules/words/no-contradictory-cues";
import { noDisputedClaim } from "./rules/words/no-disputed-claim";
import { noUnexplainedJargon } from "./rules/words/no-unexplained-jargon";
import { noDoubtfulCue } from "./rules/words/no-doubtful-cue";
import { noUnsafeCue } from "./rules/words/no-unsafe-cue";
import { oneUnitSaid } from "./rules/words/one-unit-said";
import { saidNumbers } from "./rules/words/said-numbers";
import { teenAdult } from "./rules/words/teen-adult";
import { wordsOverClip } from "./rules/words/words-over-clip";
import { cardSpace } from "./rules/film/card-space";
import { shotAngle } from "./rules/film/shot-angle";
import { warmUpShot } from "./rules/film/warm-up-shot";
import { maxMustMarks } from "./rules/film/max-must-marks";
import { noLostShot } from "./rules/film/no-lost-shot";
import { maxShotSeconds } from "./rules/film/max-shot-seconds";
import { mirrors } from "./rules/film/mirrors";
import { openingShot } from "./rules/film/opening-shot";
import { shotSet } from "./rules/film/shot-set";
import { spareBattery } from "./rules/film/spare-battery";
import { bystanders } from "./rules/film/bystanders";
import { cueAngle } from "./rules/film/cue-angle";
import { exerciseShot } from "./rules/film/exercise-shot";
import { minChapters } from "./rules/publishing/min-chapters";
import { minDaysToPublish } from "./rules/publishing/min-days-to-publish";
import { title } from "./rules/publishing/title";
import { disclosureText } from "./rules/publishing/disclosure-text";
import { noClaimInTitle } from "./rules/publishing/no-claim-in-title";
import { maxVideoLength } from "./rules/publishing/max-video-length";
import { minChapterSeconds } from "./rules/publishing/min-chapter-seconds";
import { partnerDisclosure } from "./rules/publishing/partner-disclosure";
import { publishDate } from "./rules/publishing/publish-date";

/** Every rule, in the order they are explained to people. */
export const RULES: readonly Rule[] = [
  // structure
  alternate, changeFromLast, closingLast, coolDownLast, heavyFirst, noCoreBeforeSpineLoad, noRepeatedExercise, openingFirst, powerFirst, warmUpFirst,
  audiencePosition, bothSides, closingShot, closing, coolDown, exerciseOrder, minWarmUpMinutes, opening, rampUpSets, sessionOverSlot, warmUpJoints, warmUpRule,
  audienceLandings, balanceSupport, maxWarmUpHold, minCoolDownMinutes,
  // dose
  effortAtPercent, maxBeginnerEffort, maxJumpContacts, maxMuscleSets, maxReturningVolume, maxSetJump, maxTeenLoad, maxWorkInMinute, oneUnit, repsAtPercent,
  maxLoadJump, minRest, maxAudienceEffort, minJumpRest, noFailureAlone, setLine, unreadableSetLine,
  // words
  askAProfessional, avoidRemedy, bothSidesSaid, breathingPhase, maxBreathSeconds, maxReadingGrade, noRepeatedSentence, say,
  avoid, caution, maxCueWords, noContradictoryCues, noDisputedClaim, noUnexplainedJargon, noUnsafeCue, noDoubtfulCue, oneUnitSaid, saidNumbers, teenAdult, wordsOverClip,
  // film
  maxMustMarks, noLostShot, maxShotSeconds, mirrors, openingShot, shotSet, spareBattery,
  bystanders, cardSpace, cueAngle, exerciseShot, shotAngle, warmUpShot,
  // publishing
  disclosureText, minChapters, minDaysToPublish, noClaimInTitle, title,
  maxVideoLength, minChapterSeconds, partnerDisclosure, publishDate,
];
