// How a lesson stands, in a few words for a line of the view and of the status bar; asks for nothing.
import * as vscode from 'vscode';
import type { LessonState } from '../server/protocol.ts';

/** "2 conflicts", "plan open", "1 due"; empty where nothing is open. */
export function countedWords({ errors, conflicts, plan, due }: LessonState): readonly string[] {
  const one = (count: number, single: string, several: string): string[] =>
    count === 0 ? [] : [count === 1 ? single : several];
  return [
    ...one(errors, vscode.l10n.t('1 error'), vscode.l10n.t('{0} errors', errors)),
    ...one(conflicts.length, vscode.l10n.t('1 conflict'), vscode.l10n.t('{0} conflicts', conflicts.length)),
    ...(plan.length > 0 ? [vscode.l10n.t('plan open')] : []),
    ...one(due.length, vscode.l10n.t('1 due'), vscode.l10n.t('{0} due', due.length)),
  ];
}
