// The check that says that the template of a record is for another kind of club.
import { isForOtherClub } from '../judgement/template.ts';
import { withArticle } from '../measure/article.ts';
import type { Check } from './check.ts';
import { explain } from './explain.ts';

const student = `student: 1
bag:
  four hybrid: { kind: hybrid, loft: 22 deg }`;

export const templateForOtherClub: Check = {
  code: 'template-for-other-club',
  severity: 'warning',
  title: 'Template for another club',
  explanation: explain({
    found: 'The template names the kinds of club that it is for, and the club of the record is none of them.',
    matters: 'Its windows are not held against the record. Another template, or another club, was meant.',
    raises: {
      'lesson.swing.yaml':
        'swing: 1\nstudent: mira.student.yaml\nclub: four hybrid\ntemplate: iron.template.yaml',
      'mira.student.yaml': student,
      'iron.template.yaml': 'template: 1\nclubs: [iron]',
    },
    accepts: {
      'lesson.swing.yaml':
        'swing: 1\nstudent: mira.student.yaml\nclub: four hybrid\ntemplate: turf.template.yaml',
      'mira.student.yaml': student,
      'turf.template.yaml': 'template: 1\nclubs: [fairway, hybrid]',
    },
    source: 'the file format of this project.',
  }),
  kinds: ['swing'],
  find: ({ document, template, club }) => {
    const kind = club?.kind?.value;
    if (document.kind !== 'swing' || template === undefined || document.template === undefined) return [];
    if (kind === undefined || club === undefined || !isForOtherClub(template.document, kind)) return [];
    const { clubs } = template.document;
    const names = clubs.map(({ value }) => `\`${value}\``).join(' or ');
    const found = `Found a template for ${names}; \`${club.name.value}\` is ${withArticle(kind)}`;
    return [
      {
        span: document.template.span,
        message: `${found}, and expected is a template for that.`,
        related: [{ uri: template.uri, span: clubs[0]!.span, message: 'What the template is for' }],
      },
    ];
  },
};
