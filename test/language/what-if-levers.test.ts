// How far sliders go: around the windows of template, goal and plan and the present, or over what is usual; never beyond what is possible.
import assert from 'node:assert/strict';
import { analyse } from '../../src/analysis/analyse.ts';
import { reachesOf } from '../../src/analysis/lever-reach.ts';
import { whatIfOf } from '../../src/analysis/what-if.ts';
import { whatIf, type Lever, type Move } from '../../src/language/what-if.ts';
import { fromSI } from '../../src/measure/units.ts';
import { builtIn } from '../../src/registry/registry.ts';
import { practice, snapshotWith, yamlSamples } from '../samples.ts';
import { analysed } from './analysed.ts';
import { planFiles, planRecord } from './plan-record.ts';

const template = `template: 1
clubs: [hybrid]
checkpoints: { address: { stance_width: { window: 36..42 cm, source: common practice } } }
delivery: { path: { window: 1..6 deg right, source: common practice } }
`;
const files = { ...planFiles, 'hybrid.template.yaml': template };
const plan = 'plan: [{ change: checkpoints.address.stance_width, to: 44 cm }]\n';
const record = planRecord(plan).replace('club: hybrid', 'club: hybrid\ntemplate: hybrid.template.yaml');

function leversOf(text: string, moves: readonly Move[] = [], beside: Record<string, string> = files) {
  const { levers } = whatIf(analysed(text, { files: beside }), moves)!;
  return (id: string): Lever => {
    const found = levers.find((lever) => lever.id === id);
    assert.ok(found, id);
    return found;
  };
}

describe('the levers of what if', () => {
  it('go half as wide again around their windows, the plan and the present', () => {
    const stance = leversOf(record)('checkpoints.address.stance_width');
    assert.deepEqual(stance.bands, [
      { of: 'template', words: '36..42 cm', min: 36, max: 42 },
      { of: 'plan', words: '44 cm', min: 44, max: 44 },
    ]);
    assert.equal(stance.reachWords, '');
    // From 36 to 46, where it stands, and twice 4 cm farther, which is more than half of that.
    assert.deepEqual([stance.now, stance.min, stance.max], [46, 28, 54]);
  });

  it('show the window of a goal as it is with what is moved, and stay where they were', () => {
    const path = leversOf(record)('delivery.path');
    const [, goal] = path.bands;
    assert.deepEqual(
      path.bands.map(({ of }) => of),
      ['template', 'goal'],
    );
    const slower = leversOf(record, [{ id: 'delivery.club_speed', value: 30 }])('delivery.path');
    assert.notEqual(slower.bands[1]!.words, goal!.words);
    assert.deepEqual([slower.min, slower.max], [path.min, path.max]);
  });

  it('name a contact that a goal asks for, whose open end draws them nowhere', () => {
    const contact = planRecord('', 'goals: [{ contact: ball before turf }]');
    const low = leversOf(contact)('delivery.low_point.ahead');
    assert.deepEqual(
      low.bands.map(({ of, words, min }) => ({ of, words, min })),
      [{ of: 'goal', words: 'ball before turf', min: 0 }],
    );
    assert.ok(low.max < 30, `${low.max}`);
  });

  it('turn the window of a template to the other side for a left-hander', () => {
    const left = planFiles['ansa.student.yaml'].replace('hand: right', 'hand: left');
    const path = leversOf(record, [], { ...files, 'ansa.student.yaml': left })('delivery.path');
    assert.equal(path.bands[0]!.words, '1..6 deg left');
    assert.ok(Math.abs(path.bands[0]!.min + 6) < 1e-9);
  });

  it('pass by a template for another kind of club', () => {
    const iron = { ...files, 'hybrid.template.yaml': template.replace('[hybrid]', '[iron]') };
    assert.deepEqual(
      leversOf(record, [], iron)('checkpoints.address.stance_width').bands.map(({ of }) => of),
      ['plan'],
    );
  });

  it('say so where nobody gives them a window, and go over what is seen in practice with this club', () => {
    const speed = leversOf(record)('delivery.club_speed');
    assert.deepEqual([speed.min, speed.max], [10, 55]);
    assert.deepEqual(speed.bands, [{ of: 'practice', words: '10..55 m/s with a hybrid', min: 10, max: 55 }]);
    assert.match(speed.reachWords, /^Neither template nor goal nor plan/);
  });

  it('go four readings to each side where not even practice has a window', () => {
    const analysis = analysed(record, { files });
    const face = builtIn.find('delivery.attack')!;
    const bare = { ...face, practice: undefined, practiceByClub: undefined };
    const reach = reachesOf(analysis, analysis.account!, whatIfOf(analysis, [])!)(bare, 0);
    assert.deepEqual(reach.windows, []);
    assert.ok(Math.abs(fromSI(reach.max, 'deg') - 10) < 1e-9 && reach.min === -reach.max);
  });

  it('hold what is now and every window of the samples, and stay within what is possible', () => {
    let count = 0;
    for (const [path] of yamlSamples) {
      const analysis = analyse(practice + path, snapshotWith({}));
      for (const { id, unit, min, max, step, now, bands } of whatIf(analysis, [])?.levers ?? []) {
        const { bounds } = analysis.subject.registry.find(id)!;
        const [least, most] = [bounds.min, bounds.max].map((end) => fromSI(end, unit));
        const where = `${path} ${id}`;
        assert.ok(min >= least! - 1e-9 && max <= most! + 1e-9, where);
        assert.ok(min <= now + step && max >= now - step, where);
        assert.ok(bands.length > 0, where);
        for (const band of bands) {
          count += band.of === 'practice' ? 0 : 1;
          const ends = [band.min, band.max].filter((end) => end > least! && end < most!);
          assert.ok(
            ends.every((end) => end >= min - step && end <= max + step),
            `${where} ${band.words}`,
          );
        }
      }
    }
    assert.ok(count > 20, `${count}`);
  });
});
