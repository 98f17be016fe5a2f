// The one entry of the analysis: a URI and the texts known so far in, document, derivation and findings out; reads no file.
import type { Subject } from '../checks/subject.ts';
import { expressionProblems } from '../judgement/book.ts';
import { sizeProblems } from '../judgement/cause-quantity.ts';
import { showValue } from '../measure/show.ts';
import type { FileKind, SwingwrightDocument } from '../record/document.ts';
import { isUnsaved, kindOf, kindOfText } from '../record/kind.ts';
import { parseDocument } from '../record/parse.ts';
import { noColumns } from '../record/shot-columns.ts';
import { builtIn } from '../registry/registry.ts';
import { keepAnalysis, keptAccount, parsedDocument, shotsOf, unchangedAnalysis } from './cache.ts';
import type { AnalysisCache } from './cache.ts';
import { findingsOf } from './findings.ts';
import { judgementOf } from './judge.ts';
import { forecastOf } from './plan.ts';
import { measuredOf } from '../judgement/measured.ts';
import { judgeProofs } from '../judgement/outcome.ts';
import { proofProblems } from '../judgement/proof.ts';
import { followReferences } from './references.ts';
import { lookoutOver } from './lookout.ts';
import type { Lookout } from './lookout.ts';
import type { Analysis, Snapshot } from './result.ts';
import { shotsInList } from './shots.ts';
import { situationOf } from './situation.ts';
import { findWorkspace } from './workspace.ts';

/**
 * Analyses the file at `uri` as far as the snapshot goes. Files that are referred to but not in the snapshot are
 * listed in `wanted` and treated as not there, without a finding; load them and analyse again (see settle.ts).
 * A URI whose suffix is unknown, or whose text is not there, gives an analysis without findings. Never throws.
 */
export function analyse(uri: string, snapshot: Snapshot, cache?: AnalysisCache): Analysis {
  const kept = unchangedAnalysis(cache, uri, snapshot);
  if (kept !== undefined) return kept;
  const analysis = analyseAnew(uri, snapshot, cache);
  keepAnalysis(cache, analysis, snapshot);
  return analysis;
}

function analyseAnew(uri: string, snapshot: Snapshot, cache: AnalysisCache | undefined): Analysis {
  const lookout = lookoutOver(snapshot);
  const state = lookout.file(uri);
  const text = state?.kind === 'text' ? state.text : '';
  const kind = kindOf(uri) ?? (isUnsaved(uri) ? kindOfText(text) : undefined);
  if (kind === undefined || state?.kind !== 'text') return analysisOfNothing(uri, kind, lookout);

  const nearest = findWorkspace(uri, lookout, cache);
  const { workspace, own } = nearest;
  const { registry } = own;
  // The workspace file itself is what the registry comes from.
  const document = parsedDocument(cache, uri, kind, state.text, kind === 'workspace' ? builtIn : registry);
  const followed = followReferences(uri, document, lookout, (at, of, text) =>
    parsedDocument(cache, at, of, text, registry),
  );
  const account =
    document.kind === 'swing'
      ? keptAccount(
          cache,
          uri,
          situationOf(document, followed.student?.document, followed.club, workspace?.document, own),
        )
      : undefined;
  const shots =
    followed.shotsFile === undefined
      ? shotsInList(uri, document)
      : shotsOf(cache, followed.shotsFile, workspace?.document.shotColumns ?? noColumns, registry);
  const bare: Omit<Subject, 'forecast'> = {
    uri,
    document,
    problems: [
      ...document.problems,
      ...(document.kind === 'swing' ? proofProblems(document, registry) : []),
      ...nearest.problems,
      ...(document.kind === 'workspace' ? own.problems : []),
      ...followed.problems,
      ...(document.kind === 'faults'
        ? [...expressionProblems(document, registry), ...sizeProblems(document, registry)]
        : []),
    ],
    student: followed.student,
    club: followed.club,
    template: followed.template,
    faultBooks: followed.faultBooks,
    workspace,
    review: followed.review,
    record: followed.record,
    registry,
    own: { checks: own.checks, relations: own.model?.relations ?? [], derived: own.derived },
    shots,
    proofs:
      document.kind === 'swing' && account !== undefined && document.plan.length > 0
        ? judgeProofs(document.plan, measuredOf(account, shots?.summary), registry)
        : [],
    derivation: account?.derivation,
    agreement: account?.agreement,
    judgement:
      document.kind === 'swing' && account !== undefined
        ? judgementOf(
            document,
            followed.faultBooks,
            followed.student?.document,
            account,
            registry,
            workspace?.document.coverage ?? 1,
          )
        : undefined,
    show: showValue,
  };
  const hasPlan = document.kind === 'swing' && document.plan.length > 0;
  const subject: Subject = { ...bare, forecast: hasPlan ? forecastOf(bare, account) : undefined };
  return {
    uri,
    document,
    subject,
    derivation: account?.derivation,
    agreement: account?.agreement,
    account,
    findings: findingsOf(subject),
    wanted: lookout.wanted(),
    used: lookout.used(),
  };
}

function analysisOfNothing(uri: string, kind: FileKind | undefined, lookout: Lookout): Analysis {
  const document = emptyDocument(kind);
  const subject: Subject = {
    uri,
    document,
    problems: [],
    student: undefined,
    club: undefined,
    template: undefined,
    faultBooks: [],
    workspace: undefined,
    review: undefined,
    record: undefined,
    registry: builtIn,
    own: { checks: [], relations: [], derived: new Map() },
    shots: undefined,
    derivation: undefined,
    agreement: undefined,
    judgement: undefined,
    forecast: undefined,
    proofs: [],
    show: showValue,
  };
  const wanted = kind === undefined ? [] : lookout.wanted();
  const nothing = { derivation: undefined, agreement: undefined, account: undefined, findings: [] };
  return { uri, document, subject, ...nothing, wanted, used: lookout.used() };
}

/** A document that says nothing; of a file of unknown kind it is a review of nothing, the kind with the least in it. */
function emptyDocument(kind: FileKind | undefined): SwingwrightDocument {
  return { ...parseDocument(kind ?? 'review', ''), problems: [] };
}
