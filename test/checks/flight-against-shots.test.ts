// Tests of the check flight-against-shots and of the edit that takes the typical shot.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { takeTypicalShot } from '../../src/checks/typical-shot.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { analyseFiles, applied, assertMarked, assertNone, messageOf, type Files } from './files.ts';

const csv = `carry,start,finish
168,1 right,3 right
171,2 right,6 right
165,0,1 left
169,1 right,2 right
166,1 right,4 right
`;

function withShots(record: string): Files {
  return { 'lesson.swing.yaml': record, 'shots.csv': csv };
}

/** The record with the typical shot taken; undefined where there is nothing to take. */
function taken(record: string): string | undefined {
  const fix = takeTypicalShot(analyseFiles(withShots(record)).subject);
  return fix && applied(record, fix.edits);
}

describe('flight-against-shots', () => {
  it('marks an entry far from the shots and says their mean and spread', () => {
    const analysis = assertMarked(
      'flight-against-shots',
      withShots(`swing: 1
flight:
  carry: 140 m ± 1 m
#        ^^^^^^^^^^^ warning[flight-against-shots]
shots: shots.csv`),
    );
    // Mean 839/5 = 167.8; Σ(x − mean)² = 22.8, over 4 and under the root 2.39.
    assert.match(
      messageOf(analysis, 'flight-against-shots'),
      /^Carry 140 m does not fit the shots: 5 of them average 167\.8 m ± 2\.4 m \(standard deviation\)\.$/,
    );
  });

  it('takes an entry within three standard deviations, widened for so few shots', () => {
    // t₀.₉₉₈₆₅(4) = 6.62; 6.62 · 2.39 √1.2 = 17.3 m, with 1 m of the entry 17.6 m.
    assertNone(
      'flight-against-shots',
      withShots('swing: 1\nflight: { carry: 151 m ± 1 m }\nshots: shots.csv'),
    );
  });

  it('says nothing of two shots, nor of what the shots do not say', () => {
    assertNone(
      'flight-against-shots',
      'swing: 1\nflight: { carry: 90 m }\nshots: [{ carry: 168 m }, { carry: 168 m }]',
    );
    assertNone('flight-against-shots', withShots('swing: 1\nflight: { apex: 30 m }\nshots: shots.csv'));
  });

  it('takes the typical shot, and is content then', () => {
    const record = 'swing: 1\nflight: { carry: 140 m ± 1 m }\nshots: shots.csv\n';
    const finding = analyseFiles(withShots(record)).findings.find(
      ({ code }) => code === 'flight-against-shots',
    )!;
    assert.match(finding.fixes[0]!.title, /^Take the typical shot \(shot 1\)$/);
    const fixed = applied(record, finding.fixes[0]!.edits);
    assert.equal(
      fixed,
      'swing: 1\nflight: { carry: 168 m, start: 1 deg right, finish: 3 m right }\nshots: shots.csv\n',
    );
    assertNone('flight-against-shots', withShots(fixed));
  });
});

describe('taking the typical shot', () => {
  it('writes a flight before the shots where there is none', () => {
    assert.equal(
      taken('swing: 1\n# the shots\nshots: shots.csv # all\n'),
      'swing: 1\n# the shots\nflight:\n  carry: 168 m\n  start: 1 deg right\n  finish: 3 m right\nshots: shots.csv # all\n',
    );
  });

  it('keeps shape, comments, order and other keys of a block, and Windows line breaks', () => {
    const record =
      'swing: 1\r\nflight: # seen\r\n    shape: draw\r\n    carry: 150 m # by eye\r\n    apex: 30 m\r\nshots: shots.csv\r\n';
    assert.equal(
      taken(record),
      'swing: 1\r\nflight: # seen\r\n    start: 1 deg right\r\n    finish: 3 m right\r\n    shape: draw\r\n    carry: 168 m # by eye\r\n    apex: 30 m\r\nshots: shots.csv\r\n',
    );
  });

  it('fills an empty flight', () => {
    const filled = 'carry: 168 m, start: 1 deg right, finish: 3 m right';
    assert.equal(
      taken('swing: 1\nflight: {}\nshots: shots.csv\n'),
      `swing: 1\nflight: { ${filled} }\nshots: shots.csv\n`,
    );
    assert.equal(
      taken('swing: 1\nflight: # later\nshots: shots.csv\n'),
      `swing: 1\nflight: # later\n  ${filled.replaceAll(', ', '\n  ')}\nshots: shots.csv\n`,
    );
    assert.equal(
      taken('swing: 1\nflight: { carry: 168 m, start: , finish: 3 m right }\nshots: shots.csv\n'),
      'swing: 1\nflight: { carry: 168 m, start: 1 deg right, finish: 3 m right }\nshots: shots.csv\n',
    );
  });

  it('takes the place of a block of several lines', () => {
    const head = 'swing: 1\nflight:\n  finish: 3 m right\n  start: 1 deg right\n  carry:';
    const tail = '\n\n# end\nshots: shots.csv\n';
    for (const block of [
      '\n    value: 150 m\n    by: eye',
      '\n    - 150 m\n    - 160 m',
      ' # two\n    - 150 m',
      ' |-\n    150 m',
    ])
      assert.equal(
        taken(head + block + tail),
        head + (block.startsWith(' # two') ? ' # two\n    168 m' : ' 168 m') + tail,
        block,
      );
  });

  it('has nothing to do where the flight says it already', () => {
    assert.equal(
      taken('swing: 1\nflight: { finish: 3 m right, carry: 168 m, start: 1 deg right }\nshots: shots.csv\n'),
      undefined,
    );
  });

  it('changes no byte outside of the flight, whatever stands around it', () => {
    const comment = fc.constantFrom('', ' # note', ' # accept[outside-practice]: wind');
    const value = fc.constantFrom(
      '150 m',
      '~150 m by eye',
      '{ value: 150 m, doubtful: true }',
      '[150 m, 160 m]',
      '',
      '"150 m"',
    );
    const key = fc.constantFrom('carry', 'start', 'apex', 'finish');
    const start = fc.constantFrom('1 deg left', '2');
    const body = fc.uniqueArray(fc.tuple(key, value, start, comment), {
      selector: ([name]) => name,
      maxLength: 4,
    });
    const around = fc.constantFrom(
      'club: iron',
      '# words',
      'notes: "a, b: c"',
      'goals:\n  - { carry: 170 m }',
    );
    const feed = fc.constantFrom('\n', '\r\n');
    fc.assert(
      fc.property(
        body,
        around,
        around,
        feed,
        fc.constantFrom('block', 'flow', 'none'),
        (entries, before, after, end, form) => {
          fc.pre(before !== after);
          const said = entries.map(
            ([name, long, angle, note]) => [name, name === 'start' ? angle : long, note] as const,
          );
          const flight =
            form === 'none'
              ? []
              : form === 'flow'
                ? [`flight: { ${said.map(([name, text]) => `${name}: ${text}`).join(', ')} }`]
                : ['flight:', ...said.map(([name, text, note]) => `  ${name}: ${text}${note}`)];
          const record = ['swing: 1', before, ...flight, 'shots: shots.csv', after, '']
            .join(end)
            .replaceAll(/\r?\n/g, end);
          const result = taken(record);
          if (result === undefined) return;
          const head = ['swing: 1', before, ''].join(end).replaceAll(/\r?\n/g, end);
          const tail = ['', 'shots: shots.csv', after, ''].join(end).replaceAll(/\r?\n/g, end);
          assert.ok(result.startsWith(head) && result.endsWith(tail), result);
          for (const [, , note] of form === 'block' ? said : []) assert.ok(result.includes(note));
          const document = parseDocument('swing', result);
          assert.ok(document.kind === 'swing');
          assert.equal(document.entries.get('flight.carry')!.readings[0]!.measure.value, 168);
          assert.equal(
            document.entries.get('flight.apex') !== undefined,
            form !== 'none' && said.some(([name]) => name === 'apex'),
          );
          assert.equal(taken(result), undefined);
        },
      ),
    );
  });
});
