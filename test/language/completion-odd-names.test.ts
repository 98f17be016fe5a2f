// Names that YAML would take for something else are written in quotes, and names that are refused are not proposed.
import assert from 'node:assert/strict';
import { analyse } from '../../src/analysis/analyse.ts';
import { lineTableOf, positionAt } from '../../src/analysis/positions.ts';
import { findCompletions } from '../../src/language/index.ts';
import { marked } from '../marked.ts';
import { snapshotWith } from '../samples.ts';
import { today, written } from './proposals.ts';

const folder = 'file:///odd/';
const odd = ['12', '0x1f', '1e3', '.5', '-3', '.inf', 'true', 'a: b', '# 2'];
const files = {
  [`${folder}x%3A%20y.student.yaml`]: `student: 1\nname: T\nhand: right\nbag:\n${odd.map((name) => `  ${JSON.stringify(name)}: { kind: iron }\n`).join('')}`,
  [`${folder}o.faults.yaml`]: `faults: 1\nbook:\n${odd.map((name) => `  ${JSON.stringify(name)}: { title: T, evidence: delivery.path > 1 deg }\n`).join('')}`,
  [`${folder}swingwright.yaml`]:
    'swingwright: 1\nmethods: { "cam # 2": { uncertainty: { angle: 1 deg } }, wand: { uncertainty: { angle: 1 deg } } }\nquantities: { delivery.wand: { like: delivery.path, title: Wand A } }\n',
};
const head = 'swing: 1\nstudent: "./x: y.student.yaml"\nfaults_from: o.faults.yaml\n';

function after(source: string): Record<'labels' | 'texts' | 'details', readonly string[]> {
  const { text, offset } = marked(source);
  const uri = `${folder}n.swing.yaml`;
  const analysis = analyse(uri, snapshotWith({ ...files, [uri]: text }));
  const items = findCompletions(analysis, {
    position: positionAt(lineTableOf(text), offset),
    files: Object.keys(files),
    earlier: undefined,
    usual: new Map(),
    today,
    snippets: true,
    asksAgain: true,
  });
  return {
    labels: items.map(({ label }) => label),
    texts: items.map((item) => written(text, item)),
    details: items.flatMap(({ detail }) => detail ?? []),
  };
}

function wrongIn(text: string): readonly string[] {
  const uri = `${folder}n.swing.yaml`;
  return analyse(uri, snapshotWith({ ...files, [uri]: text }))
    .findings.filter(({ code }) => /shape|syntax|unknown|missing-reference/.test(code))
    .map(({ code, message }) => `${code} ${message} in ${text}`);
}

describe('odd names', () => {
  for (const source of [
    `${head}club: $0\n`,
    `${head}club: '$0'\n`,
    `${head}faults:\n  - fault: $0\n`,
    `${head}faults: [{ fault: $0 }]\n`,
  ])
    it(`read back as the same words after ${JSON.stringify(source.slice(head.length))}`, () => {
      const { labels, texts } = after(source);
      assert.deepEqual(
        odd.filter((name) => !labels.includes(name)),
        [],
      );
      assert.deepEqual(texts.flatMap(wrongIn), []);
    });

  it('of files are written so that they lead to the file', () => {
    const { labels, texts } = after('swing: 1\nstudent: $0\n');
    assert.deepEqual(labels, ['./x: y.student.yaml']);
    assert.deepEqual(texts.flatMap(wrongIn), []);
  });

  it('of own quantities keep their capitals but the first', () => {
    assert.ok(after(`${head}delivery:\n  wand: 2 $0\n`).details.includes('unit of wand A'));
  });

  it('of methods that are refused are not proposed', () => {
    for (const value of ['2 deg right by $0', '2 deg right $0', '{ value: 2 deg right, by: $0 }']) {
      const { labels } = after(`${head}delivery:\n  path: ${value}\n`);
      assert.ok(
        labels.some((label) => label.includes('wand')),
        value,
      );
      assert.deepEqual(
        labels.filter((label) => label.includes('#')),
        [],
      );
    }
  });
});
