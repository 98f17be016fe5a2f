// The check that says which silencing comment gives no reason.
import type { Check } from './check.ts';
import { explain } from './explain.ts';

/** What stands in the place of a reason until somebody writes one. */
export const noReasonYet = 'say why';

export const silenceWithoutReason: Check = {
  code: 'silence-without-reason',
  severity: 'warning',
  title: 'Silence without a reason',
  explanation: explain({
    found: 'A comment silences a finding and does not say why.',
    matters: 'The next reader, most likely yourself in a year, needs to know whether the reason still holds.',
    raises: `delivery:
  attack: 20 deg down # accept[outside-practice]`,
    accepts: `delivery:
  attack: 20 deg down # accept[outside-practice]: a steep chop out of deep grass`,
    source: 'judgement.',
  }),
  kinds: 'all',
  find: ({ document }) =>
    document.silences
      // A comment that accepts several codes is several silences in one place, one after the other.
      .filter(
        ({ reason, span }, at, all) =>
          (reason.trim() === '' || reason.trim() === noReasonYet) && all[at - 1]?.span.start !== span.start,
      )
      .map(({ code, span }) => ({
        span,
        message: `Found no reason for accepting \`${code.value}\`; expected one after a colon, as in \`# accept[${code.value}]: measured twice\`.`,
      })),
};
