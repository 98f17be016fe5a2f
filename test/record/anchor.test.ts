// Tests of what a remark is fastened to: found by its keys wherever it stands, and compared by what it means.
import assert from 'node:assert/strict';
import { builtIn } from '../../src/registry/registry.ts';
import { anchorAt, anchorsOf, isOneValue, isUnchanged, valueWords } from '../../src/record/anchor.ts';
import type { SwingRecord } from '../../src/record/document.ts';
import { fingerprintOf } from '../../src/record/fingerprint.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { lesson } from './lesson.ts';

function record(text: string): SwingRecord {
  const document = parseDocument('swing', text);
  assert.equal(document.kind, 'swing');
  return document;
}

describe('what a remark is fastened to', () => {
  const read = record(lesson);

  it('is found by the keys that lead to it, and items of lists by what they are about', () => {
    const about = [...anchorsOf(record(`${lesson}shots:\n  - { carry: 160 m }\n`)).keys()];
    for (const id of [
      'club',
      'checkpoints.address.stance_width',
      'delivery.low_point.ahead',
      'delivery.face',
      'shots.1.carry',
    ])
      assert.ok(about.includes(id), id);
    assert.ok(anchorsOf(record('faults: [{ fault: low-hands, at: impact }]')).has('faults.low-hands'));
  });

  it('says what stands there on one line, without comments', () => {
    const at = anchorsOf(read);
    assert.equal(at.get('delivery.face')?.value, '[1 deg right by radar, 3 deg right by eye]');
    assert.equal(at.get('checkpoints.address.head')?.value, '4 cm behind');
    assert.equal(
      at.get('checkpoints.impact.head')?.value,
      '{ value: 4 cm behind, by: video, note: a still frame }',
    );
  });

  it('still means its own text, at every place', () => {
    for (const [about, { value }] of anchorsOf(read))
      assert.ok(isUnchanged(read, about, value, builtIn), `${about}: ${value}`);
  });

  it('still means it after edits above, other units, other forms and comments', () => {
    const now = record(
      '# new\nclub: x\ndelivery:\n  # said again\n  face: { value: 1° right, by: radar }   # held\n  attack: 0.1 rad down\n',
    );
    assert.ok(isUnchanged(now, 'delivery.face', '1 deg right by radar', builtIn));
    assert.ok(!isUnchanged(now, 'delivery.face', '1 deg left by radar', builtIn));
    assert.ok(!isUnchanged(now, 'delivery.face', '1 deg right by eye', builtIn));
    assert.ok(!isUnchanged(now, 'delivery.path', '1 deg right', builtIn));
  });

  it('knows a long value by a hash of what was cut', () => {
    const shots = (carry: number): SwingRecord =>
      record(`shots:\n${Array.from({ length: 40 }, (_, i) => `  - { carry: ${carry + i} m }\n`).join('')}`);
    const { value } = anchorsOf(shots(150)).get('shots')!;
    assert.ok(value.length < 300);
    assert.ok(isUnchanged(shots(150), 'shots', value, builtIn));
    assert.ok(!isUnchanged(shots(151), 'shots', value, builtIn));
  });

  it('is the entry at the cursor, else the first on its line, else the one that goes on there', () => {
    const at = (words: string): string | undefined => anchorAt(read, lesson.indexOf(words))?.about;
    assert.equal(at('8 deg out'), 'checkpoints.address.lead_foot_flare');
    assert.equal(at('# between heel'), 'checkpoints.address.stance_width');
    assert.equal(at("note: 'a still"), 'checkpoints.impact.head');
    assert.equal(at('- 10 cm ahead by eye'), 'checkpoints.impact.hands');
    assert.equal(at('length: 11 cm'), 'ground.divot.length');
    assert.equal(at('delivery:'), 'delivery');
  });

  it('says a value with its unit', () => {
    assert.equal(valueWords(read, 'delivery.attack', '3.5 down', builtIn), '3.5 deg down');
    assert.equal(valueWords(read, 'club', 'five hybrid', builtIn), 'five hybrid');
  });

  it('never throws, whatever a remark says', () => {
    for (const value of ['', '[', ': :', '{ a', '\u0000', '- - -', '&a *a', '"', 'x # y', '| '])
      for (const about of ['delivery.face', 'club', '', '.', 'constructor', '__proto__.x'])
        assert.equal(isUnchanged(read, about, value, builtIn), false);
  });

  it('knows what can be put in the place of a value', () => {
    for (const value of [
      '2 deg right by radar',
      '[1 deg, 2 deg]',
      '{ value: 1 deg }',
      '"quoted: words"',
      '41',
    ])
      assert.ok(isOneValue(value), value);
    for (const value of ['', 'a: b', 'x # y', '[1', 'a\nb: c', '"a" b', '&x', '# y', '- a', '? a', '|'])
      assert.ok(!isOneValue(value), value);
  });
});

describe('the hash of a record', () => {
  it('is that of its values: comments, spacing, order and units make no difference', () => {
    const hash = fingerprintOf('swing: 1\nclub: x\ndelivery: { face: 1 deg right, path: 2 deg left }\n');
    assert.match(hash, /^sha256:[0-9a-f]{64}$/);
    assert.equal(
      fingerprintOf('# c\nswing: 1\n\nclub:   x # y\ndelivery:\n  path: 2° left\n  face: 1 deg right\n'),
      hash,
    );
    assert.notEqual(
      fingerprintOf('swing: 1\nclub: x\ndelivery: { face: 1.0001 deg right, path: 2 deg left }\n'),
      hash,
    );
    assert.notEqual(
      fingerprintOf('swing: 1\nclub: y\ndelivery: { face: 1 deg right, path: 2 deg left }\n'),
      hash,
    );
    assert.notEqual(fingerprintOf('swing: 1\nclub: x\n'), hash);
  });

  it('is SHA-256: the example of FIPS 180-4 by way of NIST, "abc"', async () => {
    // NIST, Cryptographic Standards and Guidelines, SHA256.pdf, one-block message sample.
    const { hashOf } = await import('../../src/record/fingerprint.ts');
    assert.equal(hashOf('abc'), 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
  });
});
