// Where a record stands in its template, and its windows in words, the same in findings, hovers and on the command line.
import { showWindow } from '../measure/show.ts';
import { isForOtherClub, standingsOf, strictnessOf, type WindowStanding } from '../judgement/template.ts';
import type { Subject } from './subject.ts';

/** Every window of the record's template; none where there is no template or it is for another kind of club. */
export function templateStandings({
  template,
  derivation,
  club,
  student,
}: Pick<Subject, 'template' | 'derivation' | 'club' | 'student'>): readonly WindowStanding[] {
  if (template === undefined || derivation === undefined) return [];
  if (isForOtherClub(template.document, club?.kind?.value)) return [];
  return standingsOf(template.document, derivation, student?.document.hand?.value);
}

/** "4..12 deg forward (firm; common practice)", as this player sees left and right. */
export function windowWords({ window, edges }: WindowStanding): string {
  const { from, to } = edges ?? window.window;
  const source = window.source === undefined ? 'no source' : window.source.replace(/\s+/g, ' ').trim();
  return `${showWindow(window.quantity, from, to)} (${strictnessOf(window)}; ${source})`;
}

/** "inside", "outside by 1.4 standard uncertainties", "outside"; undefined where nothing is known of it. */
export function standingWords({ value, edges, outsideBy }: WindowStanding): string | undefined {
  if (value === undefined || edges === undefined) return undefined;
  if (outsideBy === undefined) return 'outside';
  if (outsideBy === 0) return 'inside';
  return `outside by ${outsideBy.toFixed(1)} standard uncertainties`;
}
