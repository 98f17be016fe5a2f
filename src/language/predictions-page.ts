// The page that says how good the predictions of a practice have been, as Markdown; the numbers come from the analysis.
import {
  leanWords,
  spreadWords,
  tallyInShort,
  tallyWords,
  togetherWords,
  trustWords,
  untestedWords,
} from '../analysis/prediction-words.ts';
import type { FolderPredictions } from '../analysis/predictions.ts';
import type { Tally } from '../judgement/predictions.ts';
import { nameWithin } from '../checks/agreement.ts';
import { escapeMarkdown } from './markdown.ts';

export function predictionsPage(found: FolderPredictions): string {
  const { all, byQuantity, byOrigin, byFollowed } = found.record;
  const parts = [
    '# How good predictions have been',
    `${tallyWords(all)}.`,
    trustWords(all),
    ...(all.tested === 0 ? [] : [spreadWords(all), togetherWords]),
    untestedWords(found),
    table('By origin', byOrigin),
    table('By how far the changes were made', byFollowed),
    ...(byQuantity.length === 0
      ? []
      : [
          [
            '## By quantity',
            '',
            '| quantity | inside | misses |',
            '| --- | --- | --- |',
            ...byQuantity.map(
              (tally) =>
                `| ${escapeMarkdown(nameWithin(tally.quantity))} | ${tallyInShort(tally)} | ${escapeMarkdown(leanWords(tally))} |`,
            ),
          ].join('\n'),
        ]),
  ];
  return `${parts.filter((part) => part !== '').join('\n\n')}\n`;
}

function table(title: string, tallies: ReadonlyMap<string, Tally>): string {
  if (tallies.size === 0) return '';
  const rows = [...tallies].map(([name, tally]) => `| ${name} | ${tallyInShort(tally)} |`);
  return [`## ${title}`, '', '| | inside |', '| --- | --- |', ...rows].join('\n');
}
