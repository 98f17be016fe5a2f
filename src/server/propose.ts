// Answers what plan to propose for an open record, and writes what was picked; the search makes room for other requests.
import type { CancellationToken, CodeAction } from 'vscode-languageserver';
import { mostChangesIn, proposalInSteps, type Proposal } from '../analysis/plan.ts';
import type { Analysis, TextRange } from '../analysis/result.ts';
import {
  isAtPlan,
  plannedIn,
  proposalInShort,
  proposedChanges,
  proposedPlanEdits,
  whyNothing,
} from '../language/index.ts';
import type { Client } from './client.ts';
import type { Result } from './desk.ts';
import { mutable } from './mutable.ts';
import type { OutcomeOptions } from './outcome.ts';
import {
  proposeRequest,
  writePlanRequest,
  type ProposeParams,
  type ProposeResult,
  type WritePlanParams,
  type WritePlanResult,
} from './protocol.ts';

export function serveProposals({ connection, answer, signalOf }: OutcomeOptions): void {
  connection.onRequest(proposeRequest, ({ uri }: ProposeParams, token: CancellationToken) =>
    answer(uri, token, async ({ analysis }): Promise<ProposeResult | null> => {
      const proposal = await search(analysis, signalOf(token));
      return {
        goals: proposal === undefined ? '' : proposalInShort(analysis, proposal),
        mostChanges: mostChangesIn(analysis.subject),
        changes: proposal === undefined ? [] : proposedChanges(analysis, proposal),
        nothing: proposal === undefined ? whyNothing(analysis) : '',
        planned: plannedIn(analysis),
      };
    }),
  );
  connection.onRequest(writePlanRequest, ({ uri, picked }: WritePlanParams, token: CancellationToken) =>
    answer(uri, token, async ({ analysis, version }): Promise<WritePlanResult> => {
      const proposal = await search(analysis, signalOf(token));
      const changes = (proposal?.changes ?? []).filter(({ quantity }) => picked.includes(quantity.id));
      return { version, edits: proposedPlanEdits(analysis, changes) };
    }),
  );
}

/** On `goals` and `plan`: the editor's own command where it has one, else the best proposal as an edit. */
export async function proposeAction(
  { analysis, version }: Result,
  uri: string,
  range: TextRange,
  { proposer }: Client,
  signal: AbortSignal,
): Promise<CodeAction[]> {
  if (!isAtPlan(analysis, range)) return [];
  const kind = 'refactor.rewrite';
  if (proposer !== undefined) {
    const title = 'Propose a plan…';
    return [{ title, kind, command: { title, command: proposer, arguments: [uri] } }];
  }
  const proposal = await search(analysis, signal);
  const edits = proposal === undefined ? [] : proposedPlanEdits(analysis, proposal.changes);
  if (proposal === undefined || edits.length === 0) return [];
  const count = proposal.changes.length;
  const place = plannedIn(analysis) === 0 ? '' : ' in the place of the one that is there';
  const title = `Write the proposed plan${place}: ${count} change${count === 1 ? '' : 's'}`;
  const textDocument = { uri: analysis.uri, version };
  return [{ title, kind, edit: { documentChanges: [{ textDocument, edits: mutable(edits) }] } }];
}

/** By analysis, since who asks again asks of the same text. */
const found = new WeakMap<Analysis, { readonly proposal: Proposal | undefined }>();

/** Between two steps other requests and the end of this one are heard. */
async function search(analysis: Analysis, signal: AbortSignal): Promise<Proposal | undefined> {
  const known = found.get(analysis);
  if (known !== undefined) return known.proposal;
  const steps = proposalInSteps(analysis.subject, analysis.account);
  for (;;) {
    signal.throwIfAborted();
    const step = steps.next();
    if (step.done === true) {
      found.set(analysis, { proposal: step.value });
      return step.value;
    }
    await new Promise((resolve) => setTimeout(resolve, 0));
  }
}
