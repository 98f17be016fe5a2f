// The check that says which faults of a book bring one another about in a circle.
import { faultsOf } from '../judgement/book.ts';
import { linksBetween, loopsOf, type Link } from '../judgement/causes.ts';
import type { Check, RawFinding } from './check.ts';
import { explain } from './explain.ts';
import type { Subject } from './subject.ts';

export const circularCauses: Check = {
  code: 'circular-causes',
  severity: 'warning',
  title: 'Faults that bring one another about',
  explanation: explain({
    found:
      'A fault tends to what shows another one, and that one, by itself or through others, to what shows the first.',
    matters: 'Nobody can tell which of them is the cause, so that a plan cannot begin with it.',
    raises: {
      'house.faults.yaml': `faults: 1
book:
  early-lift:
    evidence: checkpoints.impact.head_height > 4 cm
    tends_to: [{ effect: checkpoints.impact.forward_bend, direction: less }]
  stands-up:
    evidence: checkpoints.impact.forward_bend < 20 deg
    tends_to: [{ effect: checkpoints.impact.head_height, direction: more }]`,
    },
    accepts: {
      'house.faults.yaml': `faults: 1
book:
  early-lift:
    evidence: checkpoints.impact.head_height > 4 cm
    tends_to: [{ effect: strike.height, direction: low }]
  stands-up:
    evidence: checkpoints.impact.forward_bend < 20 deg
    tends_to: [{ effect: checkpoints.impact.head_height, direction: more }]`,
    },
    source: 'the effects and the evidence of the book itself.',
  }),
  kinds: ['faults'],
  find: (subject) => {
    if (subject.document.kind !== 'faults') return [];
    const faults = faultsOf([{ uri: subject.uri, document: subject.document }, ...subject.faultBooks]);
    const links = linksBetween(
      [...faults.values()].map(({ fault }) => fault),
      subject.registry,
    );
    const uriOf = (link: Link): string => faults.get(link.from)!.uri;
    return loopsOf(links).flatMap((loop) => findingOf(loop, uriOf, subject));
  },
};

/** On the first link that stands in this book; a loop all of which stands in others is said there. */
function findingOf(
  loop: readonly Link[],
  uriOf: (link: Link) => string,
  subject: Subject,
): readonly RawFinding[] {
  const first = loop.findIndex((link) => uriOf(link) === subject.uri);
  const own = loop[first];
  if (own === undefined) return [];
  const round = [...loop.slice(first), ...loop.slice(0, first)];
  const names = round.map(({ to }) => `\`${to}\``);
  return [
    {
      span: own.effect.span,
      message: `\`${own.from}\` brings about ${names.join(', which brings about ')}; expected causes that do not come back to where they began.`,
      related: round.slice(1).map((link) => ({
        uri: uriOf(link),
        span: link.effect.span,
        message: `\`${link.from}\` brings about \`${link.to}\``,
      })),
    },
  ];
}
