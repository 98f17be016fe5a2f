// The sheet says how a record stands, draws it, and knows where each thing of it was written down.
import assert from 'node:assert/strict';
import { sheetOf, type Sheet } from '../../src/language/sheet.ts';
import { pictures } from '../../src/draw/pictures.tsx';
import type { TextRange } from '../../src/analysis/result.ts';
import { analysed, student } from './analysed.ts';
import { planFiles, planRecord, twoChanges } from './plan-record.ts';

const full = planRecord(twoChanges);

function sheet(text: string, files: Readonly<Record<string, string>> = planFiles): Sheet {
  const found = sheetOf(analysed(text, { files }));
  assert.ok(found);
  return found;
}

function textAt(text: string, { start, end }: TextRange): string {
  const lines = text.split('\n');
  assert.equal(start.line, end.line);
  return lines[start.line]!.slice(start.character, end.character);
}

describe('the sheet', () => {
  it('is called by student, club and day, and by the file where the record says none of them', () => {
    const text = 'swing: 1\nstudent: mira.student.yaml\ndate: 2026-05-14\nclub: hybrid\n';
    assert.equal(sheet(text, { 'mira.student.yaml': student }).title, 'Mira, hybrid, 2026-05-14');
    assert.equal(sheet('swing: 1\n').title, 'a.swing.yaml');
  });

  it('says how many entries are in conflict, and lists each finding with its place', () => {
    const text =
      'swing: 1\ndelivery: { path: 2 deg right ± 1 deg, face: 9 deg right ± 1 deg, face_to_path: 1 deg left ± 1 deg }\n';
    const { state, findings } = sheet(text);
    assert.equal(state[0], '1 conflict');
    const conflict = findings.find(({ code }) => code === 'face-to-path-against-face');
    assert.ok(conflict?.range);
    assert.match(textAt(text, conflict.range), /^\d|face/);
    assert.equal(sheet('swing: 1\ndelivery: { path: 2 deg right }\n').state[0], 'No entry in conflict');
  });

  it('knows where an entry stands, and that nothing computed was written down', () => {
    const { things } = sheet(full);
    assert.equal(textAt(full, things['delivery.path']!.range!), 'path: 3 deg left ± 0.5 deg');
    assert.equal(things['delivery.path']!.number, '3.0 deg left ± 0.5 deg');
    assert.equal(things['delivery.face_to_path']!.range, null);
    assert.match(things['delivery.face_to_path']!.number, /^3\.0 deg right ± 0\.7 deg$/);
  });

  it('tells of goals and plan, each with its place in the record', () => {
    const { goals, plan } = sheet(full);
    assert.match(goals[0]!.words, /^Start direction 1 deg left\.\.1 deg right: now .+, then /);
    assert.ok(goals.every(({ range }) => range !== null));
    assert.deepEqual(
      plan.map(({ words }) => words),
      ['Attack angle to 1 deg down', 'Stance width to 41 cm'],
    );
    assert.deepEqual(
      plan.map(({ range }) => textAt(full, range!)),
      ['delivery.attack', 'checkpoints.address.stance_width'],
    );
  });

  it('has every picture once, in a section, with the ids of what is drawn', () => {
    const { sections, checkpoints } = sheet(full);
    const drawn = sections.flatMap((section) => section.pictures);
    const named = (isOfOne: boolean): readonly string[] =>
      pictures.filter(({ checkpoints: of }) => of === isOfOne).map(({ name }) => name);
    assert.deepEqual(drawn.map(({ name }) => name).sort(), [...named(false)].sort());
    assert.ok(checkpoints.length > 1);
    for (const [i, checkpoint] of checkpoints.entries())
      assert.deepEqual(
        checkpoint.pictures.map(({ name }) => name),
        i === 0 ? named(true) : [],
      );
    const strike = drawn.find(({ name }) => name === 'strike-from-above');
    assert.ok(strike);
    assert.ok(strike.ids.includes('delivery.path'));
    assert.equal(new Set(strike.ids).size, strike.ids.length);
  });

  it('is there for a record with nothing in it, with one entry, and with absurd ones', () => {
    for (const text of ['', 'swing: 1\n', 'swing: 1\nflight: { carry: 9e99 km }\n', 'swing: [', '\0']) {
      const { sections } = sheet(text, {});
      assert.ok(sections.length > 0);
      assert.doesNotMatch(JSON.stringify(sections), /NaN|Infinity|undefined/);
    }
  });

  it('is none of files of another kind', () => {
    assert.equal(sheetOf(analysed(student, { name: 'mira.student.yaml' })), undefined);
  });
});
