// Where values stand in the windows of a template, left-handers among them, and whether the shipped templates are sound.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { isForOtherClub, standingsOf } from '../../src/judgement/template.ts';
import { parseDocument } from '../../src/record/parse.ts';
import type { TemplateFile } from '../../src/record/document.ts';
import { clubKinds } from '../../src/registry/generated.ts';
import { practiceWith } from '../../src/registry/registry.ts';
import { analyseFiles } from '../checks/files.ts';

function templateOf(text: string): TemplateFile {
  const document = parseDocument('template', text);
  assert.ok(document.kind === 'template');
  return document;
}

function standing(window: string, entry: string, hand?: 'left' | 'right') {
  const { derivation } = analyseFiles(`swing: 1\ndelivery: { ${entry} }\n`);
  const template = templateOf(`template: 1\ndelivery: { ${window} }\n`);
  const [one] = standingsOf(template, derivation!, hand);
  return one!;
}

describe('a window of a template', () => {
  it('is left by so many standard uncertainties', () => {
    const { outsideBy } = standing('attack: 2..6 deg down', 'attack: 7.5 deg down ± 1 deg');
    assert.ok(Math.abs(outsideBy! - 1.5) < 1e-9);
    const within = standing('attack: 2..6 deg down', 'attack: 4 deg down ± 1 deg');
    assert.deepEqual([within.outsideBy, within.state], [0, 'inside']);
  });

  it('is said to be left from one uncertainty on where it is firm, from two where it is gentle or does not say', () => {
    const firm = 'attack: { window: 2..6 deg down, strict: firm }';
    const gentle = 'attack: { window: 2..6 deg down, strict: gentle }';
    const state = (window: string, by: number): string =>
      standing(window, `attack: ${6 + by} deg down ± 1 deg`).state;
    assert.deepEqual(
      [0.9, 1.1].map((by) => state(firm, by)),
      ['just outside', 'outside'],
    );
    assert.deepEqual(
      [1.9, 2.1].map((by) => state(gentle, by)),
      ['just outside', 'outside'],
    );
    assert.deepEqual(
      [1.9, 2.1].map((by) => state('attack: 2..6 deg down', by)),
      ['just outside', 'outside'],
    );
  });

  it('is mirrored for a left-handed player where it has sides', () => {
    const path = (hand: 'left' | 'right' | undefined) =>
      standing('path: 1..4 deg right', 'path: 3 deg left ± 1 deg', hand).outsideBy;
    assert.ok(Math.abs(path('right')! - 4) < 1e-9);
    assert.equal(path('left'), 0);
    assert.equal(path(undefined), undefined);
    assert.equal(standing('attack: 2..6 deg down', 'attack: 4 deg down ± 1 deg', 'left').outsideBy, 0);
  });

  it('says nothing of what nobody measured and nothing gives', () => {
    const { value, outsideBy, state } = standing('club_speed: 30..40 m/s', 'attack: 4 deg down');
    assert.deepEqual([value, outsideBy, state], [undefined, undefined, 'not known']);
  });

  it('may be of a quantity that is computed', () => {
    const { value, outsideBy } = standing(
      'face_to_path: 0..2 deg right',
      'face: 6 deg right ± 1 deg, path: 1 deg right ± 1 deg',
      'right',
    );
    assert.equal(value?.kind, 'derived');
    // 5 deg, of which 3 outside; the uncertainty is that of a difference: √2.
    assert.ok(Math.abs(outsideBy! - 3 / Math.SQRT2) < 0.01);
  });
});

describe('a template', () => {
  it('is for the kinds of club that it names, or for all', () => {
    assert.equal(isForOtherClub(templateOf('template: 1\nclubs: [iron, wedge]'), 'wedge'), false);
    assert.equal(isForOtherClub(templateOf('template: 1\nclubs: iron'), 'wedge'), true);
    assert.equal(isForOtherClub(templateOf('template: 1'), 'wedge'), false);
    assert.equal(isForOtherClub(templateOf('template: 1\nclubs: iron'), undefined), false);
  });
});

describe('the templates of the samples', () => {
  const folder = resolve(import.meta.dirname, '../../samples/templates');
  const names = readdirSync(folder);
  const texts = names.map((name) => [name, readFileSync(resolve(folder, name), 'utf8')] as const);

  it('raise no finding, so that each window is possible and has a source', () => {
    for (const [name, text] of texts)
      assert.deepEqual(
        analyseFiles({ [name]: text }).findings.map(({ code, message }) => `${code}: ${message}`),
        [],
        name,
      );
  });

  it('are for every kind of club', () => {
    const kinds = texts.flatMap(([, text]) => templateOf(text).clubs.map(({ value }) => value));
    assert.deepEqual(kinds.sort(), [...clubKinds].sort());
  });

  it('lie inside what is seen in practice with their clubs', () => {
    for (const [name, text] of texts) {
      const { clubs, windows } = templateOf(text);
      assert.ok(windows.size >= 7, name);
      for (const [id, { quantity, window }] of windows)
        for (const { value: kind } of clubs) {
          const practice = practiceWith(quantity, kind);
          assert.ok(practice !== undefined, `${name}: practice says nothing of ${id}`);
          assert.ok(window.from >= practice.min && window.to <= practice.max, `${name}: ${id} with ${kind}`);
        }
    }
  });
});
