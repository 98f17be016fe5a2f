// `outcome`, `lessons` and `predictions` tell what became of plans, from files on the disk.
import assert from 'node:assert/strict';
import { swingwright, withFolder } from './program.ts';

const plan = `swing: 1
student: ines.student.yaml
date: 2026-05-14
club: hybrid
checkpoints: { address: { stance_width: 47 cm by tape } }
plan:
  - change: checkpoints.address.stance_width
    to: 41 cm
    proof: checkpoints.impact.lead_pressure > 70 %
  - { proof: delivery.face < 0 deg }
predicted:
  flight.carry: 178 m ± 4 m by model
  delivery.path: 2 deg right ± 1 deg by belief
  flight.curve: 3 m right ± 2 m by belief
`;
const next = `swing: 1
student: ines.student.yaml
date: 2026-06-02
club: hybrid
checkpoints:
  address: { stance_width: 41.5 cm by tape }
  impact: { lead_pressure: 72 % ± 3 % }
delivery: { path: 2.5 deg right ± 1 deg }
flight: { carry: 165 m ± 2 m }
`;
const files = {
  'swingwright.yaml': 'swingwright: 1\n',
  'ines.student.yaml': 'student: 1\nname: Ines\nhand: left\nbag: { hybrid: { kind: hybrid } }\n',
  'plan.swing.yaml': plan,
  'next.swing.yaml': next,
  'alone.swing.yaml': 'swing: 1\ndate: 2026-05-01\nclub: hybrid\n',
};

describe('swingwright outcome', () => {
  it('holds a plan against the lesson after it', () => {
    withFolder(files, (folder) => {
      const { code, out } = swingwright(['outcome', 'plan.swing.yaml'], folder);
      assert.equal(code, 0);
      assert.equal(
        out,
        `This plan. Next lesson 2026-06-02: 1 of 1 change made, 1 proof cannot be told (1 not measured), 1 of 2 predictions inside (1 not measured)
  next.swing.yaml
  Change checkpoints.address.stance_width: made: 47.0 cm ± 0.7 cm before, 41.5 cm ± 0.7 cm now, asked for 41 cm
  Proof checkpoints.impact.lead_pressure > 70 %: cannot tell (met with 75 %): pressure in the lead foot at impact 72 % ± 3 %
  Proof delivery.face < 0 deg (face direction left): not measured: no face direction
  Prediction of flight.carry by model: outside: predicted 178 m ± 4 m, came 165.0 m ± 2.0 m; 13 m less, 2.9 standard uncertainties of the difference
  Prediction of delivery.path by belief: inside: predicted 2.0 deg right ± 1.0 deg, came 2.5 deg right ± 1.0 deg; 0.5 deg further right, 0.4 standard uncertainties of the difference
  Prediction of flight.curve by belief: not measured: predicted 3.0 m right ± 2.0 m
`,
      );
    });
  });

  it('holds the last plan against a later lesson, as JSON too', () => {
    withFolder(files, (folder) => {
      assert.match(
        swingwright(['outcome', 'next.swing.yaml'], folder).out,
        /^Last plan \(2026-05-14\): 1 of 1 change/,
      );
      const { out } = swingwright(['outcome', 'next.swing.yaml', '--format', 'json'], folder);
      const { plan: none, lastPlan } = JSON.parse(out) as {
        plan: unknown;
        lastPlan: { plan: unknown; outcome: { predictions: Record<string, unknown>[]; proofs: unknown[] } };
      };
      assert.equal(none, null);
      assert.deepEqual(lastPlan.plan, { file: 'plan.swing.yaml', date: '2026-05-14', club: 'hybrid' });
      const [carry] = lastPlan.outcome.predictions;
      assert.deepEqual(
        [carry?.state, carry?.predicted, carry?.measured, carry?.miss],
        ['outside', { value: 178, u: 4 }, { value: 165, u: 2, how: 'entered', fitsItsRecord: true }, -13],
      );
    });
  });

  it('decides a plan by the first later lesson alone, and shows later ones without a verdict', () => {
    const later = next.replace('2026-06-02', '2026-06-20').replace('165 m', '177 m');
    withFolder({ ...files, 'later.swing.yaml': later }, (folder) => {
      const verdict =
        /1 of 1 change made, 1 proof cannot be told \(1 not measured\), 1 of 2 predictions inside/;
      const { out } = swingwright(['outcome', 'later.swing.yaml'], folder);
      assert.match(out, /^Last plan \(2026-05-14\), decided on 2026-06-02: 1 of 1 change made/);
      assert.match(out, verdict);
      assert.match(out, /Later, in this lesson, which decides nothing anew\n {4}Change .*: 47\.0 cm/);
      assert.match(out, /flight\.carry by model: predicted 178 m ± 4 m, came 177\.0 m ± 2\.0 m\n/);
      assert.doesNotMatch(out, /: (made|met|inside|outside)/);
      const progress = swingwright(['progress', 'ines.student.yaml'], folder).out;
      assert.match(
        progress,
        /2026-06-20 {2}a later lesson: the plan of 2026-05-14 was decided on 2026-06-02\n/,
      );
      assert.equal(progress.match(/predictions inside/g)?.length, 1);
      const { lastPlan } = JSON.parse(
        swingwright(['outcome', 'later.swing.yaml', '--format', 'json'], folder).out,
      ) as { lastPlan: { decidedBy: { file: string }; outcome: { predictions: { state: string }[] } } };
      assert.equal(lastPlan.decidedBy.file, 'next.swing.yaml');
      assert.equal(lastPlan.outcome.predictions[0]?.state, 'outside');
    });
  });

  it('counts what cannot be told on its own', () => {
    const changed = {
      ...files,
      'next.swing.yaml': next.replace('41.5 cm by tape', '44 cm ± 4 cm').replace('72 % ± 3 %', '70 % ± 3 %'),
    };
    withFolder(changed, (folder) => {
      const { out } = swingwright(['outcome', 'plan.swing.yaml'], folder);
      assert.match(out, /: 1 change cannot be told, 1 proof cannot be told \(1 not measured\), /);
      assert.match(out, /Proof checkpoints.impact.lead_pressure > 70 %: cannot tell \(met with 50 %\)/);
      assert.doesNotMatch(out, /0 of 1 change/);
    });
  });

  it('ends with 1 where there is no plan, and with 2 where there is no record', () => {
    withFolder(files, (folder) => {
      const none = swingwright(['outcome', 'alone.swing.yaml'], folder);
      assert.deepEqual([none.code, none.out], [1, 'No plan in this record, and none before it.\n']);
      assert.equal(swingwright(['outcome', 'ines.student.yaml'], folder).code, 2);
      assert.equal(swingwright(['outcome', 'nowhere.swing.yaml'], folder).code, 2);
    });
  });
});

describe('swingwright lessons', () => {
  it('lists students, clubs and lessons with what stands open', () => {
    withFolder(files, (folder) => {
      const { code, out } = swingwright(['lessons'], folder);
      assert.equal(code, 0);
      assert.match(
        out,
        /^Ines \(ines\.student\.yaml\)\n {2}hybrid\n {4}2026-05-14 {2}plan\.swing\.yaml {2}1 proof due\n {6}Plan: Next lesson 2026-06-02: /,
      );
      assert.match(out, /\nno student\n {2}hybrid\n {4}2026-05-01 {2}alone\.swing\.yaml\n$/);
      const json = JSON.parse(swingwright(['lessons', '--format', 'json'], folder).out) as {
        students: { student: string | null; clubs: { lessons: Record<string, unknown>[] }[] }[];
      };
      assert.deepEqual(
        json.students.map(({ student }) => student),
        ['ines.student.yaml', null],
      );
      assert.deepEqual(
        json.students[0]?.clubs[0]?.lessons.map(({ proofsDue }) => proofsDue),
        [1, 1],
      );
      assert.equal(swingwright(['lessons', 'nowhere'], folder).code, 2);
    });
  });
});

describe('swingwright predictions', () => {
  it('counts what was tested, and says that so few tell nothing yet', () => {
    withFolder(files, (folder) => {
      const { code, out } = swingwright(['predictions'], folder);
      assert.equal(code, 0);
      assert.match(out, /^Predictions: 1 of 2 inside \(50 %/);
      assert.match(out, /cannot be told yet/);
      assert.match(out, /^Not counted: 1 not measured\.$/m);
      assert.match(out, /^ {2}belief: 1 of 1 inside \(21 to 100 %\)$/m);
      const json = JSON.parse(swingwright(['predictions', '--format', 'json'], folder).out) as {
        all: Record<string, unknown>;
        byQuantity: Record<string, Record<string, unknown>>;
      };
      assert.deepEqual([json.all.tested, json.all.inside, json.all.trust], [2, 1, 'cannot tell']);
      assert.deepEqual(
        [json.byQuantity['flight.carry']?.meanMiss, json.byQuantity['flight.carry']?.unit],
        [-13, 'm'],
      );
      assert.equal(swingwright(['predictions', 'nowhere'], folder).code, 2);
    });
  });

  it('says so where nothing was predicted', () => {
    withFolder({ 'a.swing.yaml': next }, (folder) => {
      assert.match(swingwright(['predictions'], folder).out, /^Predictions: none tested yet\n/);
    });
  });
});
