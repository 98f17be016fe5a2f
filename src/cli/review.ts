// The `review` command: lists what is remarked on a record, and writes remarks, replies and signatures; the clock and the author's name come in here.
import { readFile, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { URI } from 'vscode-uri';
import {
  remarkOn,
  reopenThread,
  replyTo,
  settleThread,
  signOff,
  takeSuggestion,
  tornFile,
  type Hand,
  type ReviewChange,
} from '../analysis/review-edits.ts';
import { reviewOf, type Reviewed } from '../analysis/review.ts';
import { toPath } from '../disk/files.ts';
import { userNameIn } from '../disk/git.ts';
import { reviewJson, reviewText } from './formats/review.ts';
import { printable } from './formats/text.ts';
import { reviewedAt } from './reviewed.ts';

export interface ReviewOptions {
  readonly all?: true;
  readonly about?: string;
  readonly reply?: string;
  readonly settle?: string;
  readonly reopen?: string;
  readonly apply?: string;
  readonly signOff?: true;
  readonly text?: string;
  readonly suggest?: string;
  readonly author?: string;
  readonly format: 'text' | 'json';
}

const acts = ['about', 'reply', 'settle', 'reopen', 'apply', 'signOff'] as const;
type Act = (typeof acts)[number];

/** 0 listed or done, 1 it cannot be done, 2 something could not be read or written. */
export async function reviewCommand(
  path: string,
  options: ReviewOptions,
  signal: AbortSignal,
): Promise<number> {
  const [act, ...others] = acts.filter((one) => options[one] !== undefined);
  if (others.length > 0)
    return refuse(
      2,
      `found ${acts
        .filter((one) => options[one] !== undefined)
        .map(optionOf)
        .join(' and ')}; expected one of them at a time`,
    );
  if (act !== 'about' && act !== 'reply' && (options.text !== undefined || options.suggest !== undefined))
    return refuse(2, '`--text` and `--suggest` go with `--about` or `--reply`');
  const reviewed = await reviewedAt(path, signal);
  if (reviewed === undefined) return 2;
  const torn = tornFile(reviewed, toPath, { isSigning: act === 'signOff' });
  if (torn !== undefined) return refuse(2, torn);
  if (act !== undefined) return perform(act, options, reviewed);
  const review = reviewOf(reviewed);
  const threads = options.all ? review.threads : review.threads.filter(({ state }) => state !== 'settled');
  const print = options.format === 'json' ? reviewJson : reviewText;
  process.stdout.write(print(reviewed, { ...review, threads }, review.threads.length - threads.length));
  return 0;
}

async function perform(act: Act, options: ReviewOptions, reviewed: Reviewed): Promise<number> {
  const folder = dirname(URI.parse(reviewed.record.uri).fsPath);
  const author = options.author ?? (await userNameIn(folder));
  if (act !== 'apply' && (author === undefined || author.trim() === ''))
    return refuse(1, 'git knows no name here; expected yours, as in `--author "Ida"`');
  // Whole seconds, as people read them.
  const time = new Date().toISOString().replace(/\.\d+Z$/, 'Z');
  const change = changeFor(act, options, reviewed, { author: author ?? '', time });
  if (change.kind === 'refused') return refuse(1, change.reason);
  try {
    await write(change);
  } catch (error) {
    return refuse(
      2,
      `cannot write \`${toPath(change.uri)}\`: ${error instanceof Error ? error.message : String(error)}`,
    );
  }
  process.stdout.write(`${change.isNew ? 'Began' : 'Changed'} ${printable(toPath(change.uri))}.\n`);
  return 0;
}

function changeFor(act: Act, options: ReviewOptions, reviewed: Reviewed, hand: Hand): ReviewChange {
  const { text = '', suggest: suggests } = options;
  const id = act === 'signOff' ? '' : (options[act] ?? '');
  switch (act) {
    case 'about':
      return remarkOn(reviewed, { ...hand, about: id, text, suggests });
    case 'reply':
      return replyTo(reviewed, id, { ...hand, text, suggests });
    case 'settle':
      return settleThread(reviewed, id, hand);
    case 'reopen':
      return reopenThread(reviewed, id, hand);
    case 'apply':
      return takeSuggestion(reviewed, id);
    case 'signOff':
      return signOff(reviewed, hand);
  }
}

/** A new file is never written over one that is there; bytes that are no UTF-8 are never written back otherwise than they were. */
async function write({ uri, isNew, edits }: Extract<ReviewChange, { kind: 'changed' }>): Promise<void> {
  const { fsPath } = URI.parse(uri);
  const whole = isNew
    ? ''
    : new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(await readFile(fsPath));
  const mark = whole.startsWith('\ufeff') ? '\ufeff' : '';
  const text = [...edits]
    .sort((a, b) => b.span.start - a.span.start)
    .reduce(
      (done, { span, text: put }) => done.slice(0, span.start) + put + done.slice(span.end),
      whole.slice(mark.length),
    );
  await writeFile(fsPath, mark + text, { flag: isNew ? 'wx' : 'w' });
}

function optionOf(act: Act): string {
  return act === 'signOff' ? '`--sign-off`' : `\`--${act}\``;
}

function refuse(code: 1 | 2, words: string): number {
  process.stderr.write(`swingwright: ${printable(words)}.\n`);
  return code;
}
