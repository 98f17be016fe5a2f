// The check that says where a record leaves the windows of its template, and by how many standard uncertainties.
import { leftFrom, type WindowStanding } from '../judgement/template.ts';
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import { isOutside } from '../registry/registry.ts';
import type { Subject } from './subject.ts';
import { templateStandings, windowWords } from './template-words.ts';
import { placeWords } from './verdict-words.ts';

const template = `template: 1
clubs: [iron]
delivery:
  attack: { window: 2..6 deg down, strict: firm, source: common practice }`;

export const outsideTemplate: Check = {
  code: 'outside-template',
  severity: 'information',
  title: 'Outside the template',
  explanation: explain({
    found: `A number of the record lies outside the window that its template teaches toward: outside a firm window by at least ${leftFrom.firm} standard uncertainty, outside a gentle one by at least ${leftFrom.gentle}. A window that does not say how strict it is, is gentle.`,
    matters:
      'A template is what a coach teaches toward, not what is right or possible. A number that was computed and not measured is told at the reference to the template. Templates are written as for a right-handed player; for a left-handed one left and right change places.',
    raises: {
      'lesson.swing.yaml': `swing: 1
template: iron.template.yaml
delivery:
  attack: 8 deg down ± 1 deg`,
      'iron.template.yaml': template,
    },
    accepts: {
      'lesson.swing.yaml': `swing: 1
template: iron.template.yaml
delivery:
  attack: 6.5 deg down ± 1 deg`,
      'iron.template.yaml': template,
    },
    source:
      'the window that the template gives, with its own source. The thresholds are a judgement: beyond 1 and 2 standard uncertainties lie 16 and 2 of a hundred readings of a value at the very edge (normal distribution, one-sided).',
  }),
  kinds: ['swing'],
  find: (subject) => templateStandings(subject).flatMap((standing) => findingOf(standing, subject) ?? []),
};

function findingOf(standing: WindowStanding, subject: Subject): RawFinding | undefined {
  const { id, window, value, outsideBy, state } = standing;
  const { document, template: followed } = subject;
  if (state !== 'outside' || value === undefined || document.kind !== 'swing' || followed === undefined)
    return undefined;
  // What also takes the usual swing is no finding, for the template may well be unusual; nor is what is said to be impossible.
  if (value.kind === 'expected' || isOutside(value.value, window.quantity.bounds)) return undefined;
  const entry = document.entries.get(id);
  const isEntered = value.kind === 'entered' && entry !== undefined;
  const [reading, ...others] = isEntered ? entry.readings : [];
  const place = others.length > 0 ? entry?.keySpan : reading?.span;
  const span = place ?? document.template!.span;
  const { quantity } = window;
  const shown = `${quantity.title}${placeWords(quantity.checkpoint)} ${subject.show(quantity, value.value, value.u)}${isEntered ? '' : ', computed,'}`;
  return {
    span,
    message: `${shown} is outside the template by ${uncertainties(outsideBy!)}; expected ${windowWords(standing)}.`,
    related: [{ uri: followed.uri, span: window.keySpan, message: 'The window in the template' }],
  };
}

function uncertainties(outsideBy: number): string {
  const shown = outsideBy >= 10 ? String(Math.round(outsideBy)) : outsideBy.toFixed(1);
  return `${shown} standard ${shown === '1.0' ? 'uncertainty' : 'uncertainties'}`;
}
