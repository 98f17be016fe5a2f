// All measured entries of a document, whatever its kind; knows nothing of what they mean.
import type { Entry, Goal, SwingwrightDocument, TemplateWindow } from '../record/document.ts';

export function entriesOf(document: SwingwrightDocument): readonly Entry[] {
  switch (document.kind) {
    case 'swing':
      return [document.entries, ...document.shots].flatMap((entries) => [...entries.values()]);
    case 'student':
      return [document.entries, ...[...document.bag.values()].map(({ entries }) => entries)].flatMap(
        (entries) => [...entries.values()],
      );
    case 'template':
    case 'faults':
    case 'review':
    case 'workspace':
      return [];
  }
}

export function goalsOf(document: SwingwrightDocument): readonly Goal[] {
  return document.kind === 'swing' || document.kind === 'student' ? document.goals : [];
}

export function windowsOf(document: SwingwrightDocument): readonly TemplateWindow[] {
  return document.kind === 'template' ? [...document.windows.values()] : [];
}
