// Prints what is remarked on a record, for people and for programs; text from files is made harmless before it is printed.
import { jsonText } from './json-text.ts';
import pc from 'picocolors';
import type { Review, Reviewed, SignOff, Thread, ThreadComment } from '../../analysis/review.ts';
import { toPath } from '../../disk/files.ts';
import { printable } from './text.ts';

/** One block a thread: place, state and id, what stood and stands there, who said what. `hidden` are not in the list. */
export function reviewText({ record }: Reviewed, { threads, signOffs }: Review, hidden: number): string {
  const count = `${threads.length} remark${threads.length === 1 ? '' : 's'} not settled`;
  const more = hidden > 0 ? `, ${hidden} settled (\`--all\` shows them)` : '';
  const head =
    hidden > 0 || threads.every(({ state }) => state !== 'settled') ? count : `${threads.length} remarks`;
  const blocks = [...signOffs.map(signOffLine), ...threads.map((thread) => threadBlock(record.uri, thread))];
  return `${[...blocks, `${head}${more}`].join('\n\n')}\n`;
}

export function reviewJson({ record }: Reviewed, { threads, signOffs }: Review): string {
  const body = {
    format: 1,
    record: toPath(record.uri),
    threads: threads.map(({ file, place, range, id, about, ...thread }) => ({
      id,
      about,
      state: thread.state,
      line: range === undefined ? null : range.start.line + 1,
      range: range ?? null,
      then: thread.then ?? null,
      now: thread.now ?? null,
      changed: thread.isChanged,
      suggestion: thread.suggestion ?? null,
      taken: thread.isTaken,
      comments: thread.comments.map(({ suggests, state, ...comment }) => ({
        ...comment,
        suggests: suggests ?? null,
        state: state ?? null,
      })),
      file: toPath(file),
      place,
    })),
    signOffs: signOffs.map(({ by, time, file, place, isVoid }) => ({
      by,
      time,
      void: isVoid,
      file: toPath(file),
      place,
    })),
  };
  return jsonText(body);
}

function signOffLine({ by, time, isVoid }: SignOff): string {
  const words = printable(`Signed off by ${by}${time === '' ? '' : `, ${time}`}`);
  return isVoid ? `${words}: ${pc.red('void, for values have changed since')}` : words;
}

function threadBlock(record: string, thread: Thread): string {
  const { range, about, state, id, then, now, isChanged, isTaken, suggestion, comments } = thread;
  const place = `${printable(toPath(record))}${range === undefined ? '' : `:${range.start.line + 1}`}`;
  const head = `${pc.underline(place)}  ${printable(about === '' ? 'the record' : about)}  ${pc.bold(state)}  ${pc.dim(printable(id))}`;
  const where = range === undefined && about !== '' ? ['  not in the record any more'] : [];
  const values = isChanged
    ? [`  then ${then ?? ''}, now ${now === '' || now === undefined ? 'nothing' : now}`]
    : now === undefined || now === ''
      ? []
      : [`  ${now}`];
  const taken = suggestion !== undefined && isTaken ? ['  says what was suggested'] : [];
  return [head, ...[...where, ...values, ...taken].map(printable), ...comments.map(commentLine)].join('\n');
}

/** On one line, whatever breaks it has. */
function commentLine({ author, time, text, suggests, state }: ThreadComment): string {
  const words = text
    .trim()
    .split(/\s*\n\s*/)
    .join(' / ');
  const said = [words, ...(suggests === undefined ? [] : [`suggests ${suggests}`])].filter(
    (one) => one !== '',
  );
  const act = said.length > 0 ? said.join('; ') : (actWords[state ?? 'answered'] ?? '');
  return printable(`    ${[time, author].filter((one) => one !== '').join('  ')}: ${act}`);
}

const actWords: Readonly<Record<string, string>> = { settled: 'settled', open: 'opened again' };
