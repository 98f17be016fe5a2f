// The check that asks of a template's window where it comes from.
import type { TemplateWindow } from '../record/document.ts';
import type { Check, Fix } from './check.ts';
import { explain } from './explain.ts';
import { notPreferred, replace, textAt } from './fixes.ts';
import type { Subject } from './subject.ts';

export const windowWithoutSource: Check = {
  code: 'window-without-source',
  severity: 'hint',
  title: 'Window without a source',
  explanation: explain({
    found: 'The window does not say where it comes from.',
    matters:
      'A student or a colleague may ask. `source` holds a book, a paper or a course; what the trade holds without one is `common practice`.',
    raises: {
      'iron.template.yaml': 'template: 1\ndelivery:\n  attack: 2..6 deg down',
    },
    accepts: {
      'iron.template.yaml':
        'template: 1\ndelivery:\n  attack: { window: 2..6 deg down, source: common practice }',
    },
    source: 'the file format of this project.',
  }),
  kinds: ['template'],
  find: (subject) =>
    subject.document.kind !== 'template'
      ? []
      : [...subject.document.windows.values()]
          .filter(({ source }) => source === undefined || source.trim() === '')
          .map((window) => ({
            span: window.keySpan,
            message: `Found no source of this window; expected \`source\` with where it comes from, or \`common practice\`.`,
            fixes: fixesOf(window, subject),
          })),
};

/** Only where the window stands alone: a mapping has its own ways to be laid out. */
function fixesOf({ span }: TemplateWindow, subject: Subject): readonly Fix[] {
  const text = textAt(subject, span);
  if (!/^[-+~.\d]/.test(text) || /[\n{},[\]#]/.test(text)) return [];
  const mapping = `{ window: ${text}, source: common practice }`;
  return [notPreferred(replace(subject, span, mapping, 'Say that it is common practice'))];
}
