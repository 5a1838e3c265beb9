import type { LabelReader } from "../../types";
import { ballisticOrBounce } from "./ballistic-or-bounce";
import { breathHold } from "./breath-hold";
import { claimGuarantee } from "./claim-guarantee";
import { claimMedical } from "./claim-medical";
import { claimSpotReduction } from "./claim-spot-reduction";
import { dietExtreme } from "./diet-extreme";
import { disclosureMissing } from "./disclosure-missing";
import { failureUnsafe } from "./failure-unsafe";
import { jointLockout } from "./joint-lockout";
import { kneeTracking } from "./knee-tracking";
import { loadJump } from "./load-jump";
import { neckPosition } from "./neck-position";
import { noSpotter } from "./no-spotter";
import { overextension } from "./overextension";
import { painPush } from "./pain-push";
import { populationRisk } from "./population-risk";
import { shame } from "./shame";
import { spineUnderLoad } from "./spine-under-load";

/** Every label's reader, safety first. */
export const LABEL_READERS: readonly LabelReader[] = [
  spineUnderLoad, jointLockout, breathHold, painPush, ballisticOrBounce, neckPosition, kneeTracking, overextension, loadJump, noSpotter, failureUnsafe,
  claimSpotReduction, claimGuarantee, claimMedical, dietExtreme, shame, disclosureMissing, populationRisk,
];
