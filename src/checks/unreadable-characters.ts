// The check that says that a file holds characters that were lost on the way from another encoding.
import { explain } from './explain.ts';
import { fromProblems } from './from-problems.ts';

export const unreadableCharacters = fromProblems({
  code: 'unreadable-characters',
  severity: 'error',
  title: 'Not UTF-8',
  explanation: explain({
    found:
      'The file holds bytes that are not UTF-8, which show as `\ufffd`, or zero bytes as of UTF-16; where there are many, nothing of it is read.',
    matters: 'Letters and numbers may have been lost. This file is not UTF-8; save it as UTF-8.',
    raises: `notes: a Caf\ufffd at the tenth`,
    accepts: `notes: a Café at the tenth`,
    source: 'YAML 1.2.2, 5.1 and 5.2; Unicode, U+FFFD.',
  }),
});
