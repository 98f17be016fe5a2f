// The check that holds ball speed and speed ratio against the club speed and against what the Rules let a face give.
import { ruleBall } from '../physics/ball.ts';
import { relatedEntries, threshold } from './agreement.ts';
import type { Check, RawFinding } from './check.ts';
import { conflictFindings } from './conflict-check.ts';
import { explain } from './explain.ts';
import type { Subject } from './subject.ts';

const ballSpeedId = 'flight.ball_speed';
const ratioId = 'flight.speed_ratio';
const clubSpeedId = 'delivery.club_speed';
const massId = 'club.head_mass';

export const ballSpeedAgainstClubSpeed: Check = {
  code: 'ball-speed-against-club-speed',
  severity: 'warning',
  title: 'Ball speed does not fit the club speed',
  explanation: explain({
    found:
      'The ball speed or the speed ratio is not what the club speed and the strike give, or is more than any face can give.',
    matters: 'A unit may have slipped (mph for m/s), or the two speeds belong to different shots.',
    raises: `delivery: { club_speed: 41 m/s by radar }
flight: { ball_speed: 75 m/s by radar }`,
    accepts: `delivery: { club_speed: 41 m/s by radar }
flight: { ball_speed: 58 m/s by radar }`,
    source:
      'central impact: ball speed / club speed ≤ (1 + e)/(1 + m/M), with e ≤ 0.822 + 0.008 (R&A / USGA Equipment Rules, part 2); below that the impact model.',
  }),
  kinds: ['swing'],
  find: (subject) => {
    const ids = [ballSpeedId, ratioId];
    const isSaid = subject.agreement?.conflicts.some(({ id }) => ids.includes(id) || id === clubSpeedId);
    const most = isSaid === true ? [] : [...ratioAboveCeiling(subject), ...ballSpeedAboveCeiling(subject)];
    return [...conflictFindings(subject, 'ball-speed-against-club-speed'), ...most];
  },
};

/** The coefficient of restitution that the Rules allow, with their tolerance: R&A / USGA Equipment Rules, part 2. */
const mostRestitution = 0.822 + 0.008;

/**
 * The largest ball speed over club speed, (1 + e)/(1 + m/M): momentum and restitution in a central impact. An oblique or
 * off-centre strike gives less. M is as heavy as the entered head may be, or as the heaviest seen in practice.
 */
function ceiling(subject: Subject): number {
  const head = subject.derivation?.values.get(massId);
  const heaviest = subject.registry.find(massId)?.practice?.max ?? Infinity;
  const mass = head === undefined ? heaviest : head.value + threshold * (head.u ?? 0);
  return mass > 0 ? (1 + mostRestitution) / (1 + ruleBall.mass / mass) : 1 + mostRestitution;
}

function ballSpeedAboveCeiling(subject: Subject): readonly RawFinding[] {
  const ball = subject.derivation?.values.get(ballSpeedId);
  const club = subject.derivation?.values.get(clubSpeedId);
  if (ball?.kind !== 'entered' || club?.kind !== 'entered') return [];
  const most = ceiling(subject) * club.value;
  const u = Math.hypot(ball.u ?? 0, ceiling(subject) * (club.u ?? 0));
  return ball.value - most > threshold * u ? finding(subject, ballSpeedId, most, clubSpeedId) : [];
}

function ratioAboveCeiling(subject: Subject): readonly RawFinding[] {
  const ratio = subject.derivation?.values.get(ratioId);
  if (ratio?.kind !== 'entered') return [];
  const most = ceiling(subject);
  return ratio.value - most > threshold * (ratio.u ?? 0) ? finding(subject, ratioId, most, massId) : [];
}

function finding(subject: Subject, id: string, most: number, from: string): readonly RawFinding[] {
  const entry = subject.document.kind === 'swing' ? subject.document.entries.get(id) : undefined;
  const value = subject.derivation?.values.get(id)?.value;
  if (entry === undefined || value === undefined) return [];
  const { quantity, valueSpan: span } = entry;
  const given = id === ratioId ? 'any club' : 'this club speed';
  const message = `${quantity.title} ${subject.show(quantity, value)} is more than ${given} can give; expected at most ${subject.show(quantity, most)}.`;
  return [{ span, message, related: relatedEntries(subject, [from]) }];
}
