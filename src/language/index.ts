// All that an editor can ask of an analysis, in one place: plain data in, plain data out, one file a feature.
export { explainWord, listCodes } from './explanation.ts';
export { findActions, type ActionRequest } from './actions.ts';
export { hasLostRecord } from './lost-record.ts';
export { findDefinitions, type PageAddress } from './definition.ts';
export { findDiagnostics } from './diagnostics.ts';
export { findFoldingRanges } from './folding.ts';
export { findHints, type HintSwitches } from './hints.ts';
export { findHover, wantsLessons } from './hover.ts';
export { themeNamed, type ThemeName } from './hover-picture.ts';
export { findLenses } from './lenses.ts';
export { findLinks } from './links.ts';
export { findHighlights, findMention, findOccurrences } from './occurrences.ts';
export { findRename, findRenamed, prepareRename, type Refusal } from './rename.ts';
export { actOnReview, findReview } from './review.ts';
export { findSelectionRanges } from './selection.ts';
export { changeSummary, comparePage, recordAudit, studentPage } from './beside-pages.ts';
export { predictionsPage } from './predictions-page.ts';
export { sheetOf } from './sheet.ts';
export { whatIf } from './what-if.ts';
export { whatIfEdits } from './what-if-plan.ts';
export { findSymbols } from './symbols.ts';
export { explainWhy } from './why.ts';
export { cardName, findWorkspaceSymbols } from './workspace-symbols.ts';
export { findCompletions, type CompletionRequest } from './completion.ts';
export { isAtPart, nextSymbols } from './measure-next.ts';
export {
  isAtPlan,
  plannedIn,
  proposalInShort,
  proposedChanges,
  proposedPlanEdits,
  whyNothing,
} from './proposed-plan.ts';
export { handoutPage } from '../draw/handout/page.tsx';
