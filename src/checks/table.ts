// All checks, in the order in which they run and are listed; the checks about silences and about the others' findings come last. Holds no check itself.
import { ballSpeedAgainstClubSpeed } from './ball-speed-against-club-speed.ts';
import { bareDirection } from './bare-direction.ts';
import { agreementNotJudged } from './agreement-not-judged.ts';
import { entriesDoNotAgree } from './entries-do-not-agree.ts';
import { bareNumber } from './bare-number.ts';
import { beliefAgainstPhysics } from './belief-against-physics.ts';
import { caution } from './caution.ts';
import type { Check } from './check.ts';
import { changeAgainstBook } from './change-against-book.ts';
import { changeChangesNothing } from './change-changes-nothing.ts';
import { changesDoNotFit } from './changes-do-not-fit.ts';
import { changeInTwoWays } from './change-in-two-ways.ts';
import { changeOfOutcome } from './change-of-outcome.ts';
import { effectBothWays } from './effect-both-ways.ts';
import { expressionTellsNothing } from './expression-tells-nothing.ts';
import { faultWithoutEvidence } from './fault-without-evidence.ts';
import { changeOfDerived } from './change-of-derived.ts';
import { changeStatedTwice } from './change-stated-twice.ts';
import { evidenceShowsNothing } from './evidence-shows-nothing.ts';
import { goalForOtherClub } from './goal-for-other-club.ts';
import { goalsContradict } from './goals-contradict.ts';
import { predictionOfAnotherPlan } from './prediction-of-another-plan.ts';
import { proofAlreadyMet } from './proof-already-met.ts';
import { proofCannotBeTold } from './proof-cannot-be-told.ts';
import { proofProvesNothing } from './proof-proves-nothing.ts';
import { statedTwice } from './stated-twice.ts';
import { changeWithoutReason } from './change-without-reason.ts';
import { goalOutOfReach } from './goal-out-of-reach.ts';
import { planLoadsInjury } from './plan-loads-injury.ts';
import { planLeadsAway } from './plan-leads-away.ts';
import { tooManyChanges } from './too-many-changes.ts';
import { unknownReason } from './unknown-reason.ts';
import { circularCauses } from './circular-causes.ts';
import { circularReference } from './circular-reference.ts';
import { consentAndPrivacy } from './consent-and-privacy.ts';
import { dimensionsDoNotMatch } from './dimensions-do-not-match.ts';
import { dateAfterRecord } from './date-after-record.ts';
import { directionWithSign } from './direction-with-sign.ts';
import { divotBehindLowPoint } from './divot-behind-low-point.ts';
import { duplicateKey } from './duplicate-key.ts';
import { entryDoesNotFit } from './entry-does-not-fit.ts';
import { expressionNotAllowed } from './expression-not-allowed.ts';
import { faceToPathAgainstFace } from './face-to-path-against-face.ts';
import { faultCannotBeSeenHere } from './fault-cannot-be-seen-here.ts';
import { faultContradicted } from './fault-contradicted.ts';
import { faultNotStated } from './fault-not-stated.ts';
import { fileTooLarge } from './file-too-large.ts';
import { finishAgainstCurve } from './finish-against-curve.ts';
import { flightAgainstShots } from './flight-against-shots.ts';
import { sideAgainstPart } from './side-against-part.ts';
import { impossibleDate } from './impossible-date.ts';
import { loftAgainstLean } from './loft-against-lean.ts';
import { lowPointAgainstAttack } from './low-point-against-attack.ts';
import { measureNotAllowed } from './measure-not-allowed.ts';
import { missContradicted } from './miss-contradicted.ts';
import { missNotExplained } from './miss-not-explained.ts';
import { openRemark } from './open-remark.ts';
import { referenceNotKnownYet } from './reference-not-known-yet.ts';
import { remarkAboutNothing } from './remark-about-nothing.ts';
import { remarkOutOfStep } from './remark-out-of-step.ts';
import { remarkStatedTwice } from './remark-stated-twice.ts';
import { signOffVoid } from './sign-off-void.ts';
import { missingDirection } from './missing-direction.ts';
import { missingKey } from './missing-key.ts';
import { missingUncertainty } from './missing-uncertainty.ts';
import { missingReference } from './missing-reference.ts';
import { noValueYet } from './no-value-yet.ts';
import { numberOutOfRange } from './number-out-of-range.ts';
import { outsideBounds } from './outside-bounds.ts';
import { outsidePractice } from './outside-practice.ts';
import { outsideTemplate } from './outside-template.ts';
import { ownCheckWithoutHand } from './own-check-without-hand.ts';
import { pathAgainstArc } from './path-against-arc.ts';
import { relationTellsNothing } from './relation-tells-nothing.ts';
import { relationDoesNotHold } from './relation-does-not-hold.ts';
import { quantityAlreadyKnown } from './quantity-already-known.ts';
import { circularDerivation } from './circular-derivation.ts';
import { rivalReadings } from './rival-readings.ts';
import { shapeAgainstCurve } from './shape-against-curve.ts';
import { silenceWithoutReason } from './silence-without-reason.ts';
import { templateForOtherClub } from './template-for-other-club.ts';
import { tooDeep } from './too-deep.ts';
import { tooManyAliases } from './too-many-aliases.ts';
import { tooManyFindings } from './too-many-findings.ts';
import { uncertaintyNotPositive } from './uncertainty-not-positive.ts';
import { unknownBodyPart } from './unknown-body-part.ts';
import { unknownClub } from './unknown-club.ts';
import { unknownCode } from './unknown-code.ts';
import { unknownColumn } from './unknown-column.ts';
import { unknownDirection } from './unknown-direction.ts';
import { unknownFault } from './unknown-fault.ts';
import { unknownFunction } from './unknown-function.ts';
import { unknownKey } from './unknown-key.ts';
import { unknownMethod } from './unknown-method.ts';
import { unknownQuantity } from './unknown-quantity.ts';
import { unknownUnit } from './unknown-unit.ts';
import { unknownWord } from './unknown-word.ts';
import { unreadableCharacters } from './unreadable-characters.ts';
import { unreadableExpression } from './unreadable-expression.ts';
import { unreadableMeasure } from './unreadable-measure.ts';
import { unreadableReference } from './unreadable-reference.ts';
import { unreadableRow } from './unreadable-row.ts';
import { unsupportedVersion } from './unsupported-version.ts';
import { unusedSilence } from './unused-silence.ts';
import { windowNotAllowed } from './window-not-allowed.ts';
import { windowReversed } from './window-reversed.ts';
import { windowWithoutSource } from './window-without-source.ts';
import { wrongDimension } from './wrong-dimension.ts';
import { wrongKindOfFile } from './wrong-kind-of-file.ts';
import { wrongShape } from './wrong-shape.ts';
import { yamlSyntax } from './yaml-syntax.ts';

export const checks: readonly Check[] = [
  yamlSyntax,
  duplicateKey,
  tooManyAliases,
  tooDeep,
  fileTooLarge,
  unreadableCharacters,
  unsupportedVersion,
  unknownKey,
  missingKey,
  wrongShape,
  unknownWord,
  impossibleDate,
  sideAgainstPart,
  noValueYet,
  unreadableMeasure,
  numberOutOfRange,
  unknownUnit,
  wrongDimension,
  bareNumber,
  bareDirection,
  unknownDirection,
  missingDirection,
  missingUncertainty,
  directionWithSign,
  unknownMethod,
  uncertaintyNotPositive,
  windowReversed,
  windowNotAllowed,
  measureNotAllowed,
  missingReference,
  referenceNotKnownYet,
  unreadableReference,
  wrongKindOfFile,
  circularReference,
  unknownColumn,
  unreadableRow,
  unknownClub,
  unknownFault,
  unreadableExpression,
  expressionNotAllowed,
  unknownQuantity,
  unknownFunction,
  dimensionsDoNotMatch,
  unknownBodyPart,
  quantityAlreadyKnown,
  circularDerivation,
  circularCauses,
  evidenceShowsNothing,
  faultWithoutEvidence,
  effectBothWays,
  changeInTwoWays,
  outsideBounds,
  outsidePractice,
  templateForOtherClub,
  outsideTemplate,
  windowWithoutSource,
  rivalReadings,
  faceToPathAgainstFace,
  pathAgainstArc,
  lowPointAgainstAttack,
  divotBehindLowPoint,
  loftAgainstLean,
  ballSpeedAgainstClubSpeed,
  finishAgainstCurve,
  entryDoesNotFit,
  agreementNotJudged,
  entriesDoNotAgree,
  relationDoesNotHold,
  relationTellsNothing,
  expressionTellsNothing,
  shapeAgainstCurve,
  flightAgainstShots,
  faultContradicted,
  faultCannotBeSeenHere,
  faultNotStated,
  beliefAgainstPhysics,
  missContradicted,
  missNotExplained,
  caution,
  statedTwice,
  changeWithoutReason,
  changeStatedTwice,
  changeOfDerived,
  changeOfOutcome,
  changeAgainstBook,
  changeChangesNothing,
  changesDoNotFit,
  proofProvesNothing,
  proofCannotBeTold,
  proofAlreadyMet,
  goalForOtherClub,
  goalsContradict,
  goalOutOfReach,
  planLoadsInjury,
  planLeadsAway,
  predictionOfAnotherPlan,
  tooManyChanges,
  unknownReason,
  consentAndPrivacy,
  dateAfterRecord,
  ownCheckWithoutHand,
  remarkStatedTwice,
  remarkAboutNothing,
  remarkOutOfStep,
  signOffVoid,
  openRemark,
  silenceWithoutReason,
  unknownCode,
  unusedSilence,
  tooManyFindings,
];

const byCode: ReadonlyMap<string, Check> = new Map(checks.map((check) => [check.code, check]));

/** The built-in checks and the workspace's own, which come before those that look at what the others found. */
export function checksWith(own: readonly Check[]): readonly Check[] {
  if (own.length === 0) return checks;
  const closing = checks.indexOf(silenceWithoutReason);
  return [...checks.slice(0, closing), ...own, ...checks.slice(closing)];
}

/** The check with this code, or undefined. */
export function findCheck(code: string): Check | undefined {
  return byCode.get(code);
}

export const codes: readonly string[] = checks.map((check) => check.code);
