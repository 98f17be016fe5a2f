// `plan` foresees, proposes and keeps, from files on the disk.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { proposalOf } from '../../src/analysis/plan.ts';
import { lineTableOf, rangeOf } from '../../src/analysis/positions.ts';
import { proposedPlanEdits } from '../../src/language/index.ts';
import { storePrediction } from '../../src/language/store-prediction.ts';
import { analysed, everywhere } from '../language/analysed.ts';
import { planFiles, planRecord, twoChanges } from '../language/plan-record.ts';
import { swingwright, withFolder } from './program.ts';

const bare = `# Kept: why this lesson was held.
swing: 1
student: ansa.student.yaml
club: hybrid
checkpoints: { impact: { shaft_lean: 5 deg forward ± 2 deg } } # by eye
delivery: { club_speed: 41 m/s ± 0.5 m/s, attack: 3 deg down ± 0.5 deg, path: 3 deg left ± 0.5 deg, face: 0 deg ± 0.5 deg }
`;
const goals = 'goals: [{ start: 1 deg left..1 deg right, curve: 4 m left..4 m right }]\n';
const stated = `${bare}misses: [slice]
${goals}plan:
  - { change: delivery.face_to_path, to: 0 deg ± 0.5 deg, because: slice, proof: flight.apex > 20 m }
`;
const files = {
  'ansa.student.yaml':
    'student: 1\nhand: right\nbag: { hybrid: { kind: hybrid, loft: 22 deg, head_mass: 230 g } }\n',
  'bare.swing.yaml': bare,
  'goals.swing.yaml': bare + goals,
  'stated.swing.yaml': stated,
};

interface PlanJson {
  readonly format: number;
  readonly file: string;
  readonly changes: readonly {
    readonly change: string;
    readonly effects: readonly { readonly id: string }[];
  }[];
  readonly goals: readonly {
    readonly goal: string;
    readonly chanceNow: number;
    readonly chanceThen: number;
  }[];
  readonly proposal: {
    readonly chance: number;
    readonly changes: readonly { readonly change: string; readonly to: number; readonly proof: string }[];
  } | null;
}

function planned(args: readonly string[], folder: string): PlanJson {
  const { code, out, err } = swingwright(['plan', ...args, '--format', 'json'], folder);
  assert.equal(code, 0, err);
  return JSON.parse(out) as PlanJson;
}

describe('swingwright plan', () => {
  it('says what each change leads to and how each goal stands, with the quantities of the proofs', () => {
    withFolder(files, (folder) => {
      const { code, out } = swingwright(['plan', 'stated.swing.yaml'], folder);
      assert.equal(code, 0);
      const lines = out.split('\n');
      assert.equal(lines[0], 'delivery.face_to_path');
      assert.match(out, /^ {4}curve .* moves .* left ± .*, by model$/m);
      assert.match(out, /^ {4}apex .*, by model$/m);
      assert.match(out, /^Goals$/m);
      assert.match(out, /^ {2}curve 4 m left\.\.4 m right: now .* \(\d+ %\), then .* \((over )?\d+ %\)$/m);
    });
  });

  it('gives the same as JSON, without a proposal that nobody asked for', () => {
    withFolder(files, (folder) => {
      const { format, file, changes, goals: stands, proposal } = planned(['stated.swing.yaml'], folder);
      assert.deepEqual([format, file, proposal], [1, 'stated.swing.yaml', null]);
      assert.deepEqual(
        changes.map(({ change }) => change),
        ['delivery.face_to_path'],
      );
      assert.ok(changes[0]!.effects.some(({ id }) => id === 'flight.curve'));
      const curve = stands.find(({ goal }) => goal === 'curve')!;
      assert.ok(curve.chanceThen > curve.chanceNow + 0.1, `${curve.chanceNow} to ${curve.chanceThen}`);
    });
  });

  it('proposes few changes, each with a proof', () => {
    withFolder(files, (folder) => {
      const { proposal } = planned(['goals.swing.yaml', '--propose'], folder);
      assert.ok(proposal !== null && proposal.changes.length >= 1 && proposal.changes.length <= 3);
      for (const { change, proof } of proposal.changes) assert.ok(proof.startsWith(`${change} `), proof);
      assert.ok(proposal.chance > 0.2, `${proposal.chance}`);
      const { code, out } = swingwright(['plan', 'goals.swing.yaml', '--propose'], folder);
      assert.equal(code, 0);
      assert.match(out, /^Proposed\n {2}.* from .* to .*, because of /);
      assert.match(out, /^Goals with it$/m);
    });
  });

  it('keeps a proposal behind what stands there, comments and all', () => {
    withFolder(files, (folder) => {
      const at = join(folder, 'goals.swing.yaml');
      assert.equal(swingwright(['plan', 'goals.swing.yaml', '--propose', '--write'], folder).code, 0);
      const once = readFileSync(at, 'utf8');
      assert.ok(once.startsWith(bare + goals));
      assert.match(
        once.slice(bare.length + goals.length),
        /^plan:\n {2}- change: .*[^]*\npredicted:\n(?: {2}.* by model\n)+$/,
      );
      assert.equal(swingwright(['check', 'goals.swing.yaml'], folder).code, 0);
    });
  });

  it('keeps what a stated plan leads to, and a second time changes nothing', () => {
    const tail = 'notes: kept # to the end\n';
    withFolder({ ...files, 'stated.swing.yaml': stated + tail }, (folder) => {
      const at = join(folder, 'stated.swing.yaml');
      assert.equal(swingwright(['plan', 'stated.swing.yaml', '--write'], folder).code, 0);
      const once = readFileSync(at, 'utf8');
      assert.ok(once.startsWith(stated + tail));
      assert.match(once, /\npredicted:\n(?: {2}.* by model\n)+$/);
      assert.match(once, /^ {2}flight\.apex: /m);
      assert.equal(swingwright(['plan', 'stated.swing.yaml', '--write'], folder).code, 0);
      assert.equal(readFileSync(at, 'utf8'), once);
    });
  });

  it('writes what the editor writes, to the letter: a proposal, and what a stated plan leads to', () => {
    const texts = {
      'proposed.swing.yaml': planRecord('', goals.trim()),
      'stated.swing.yaml': planRecord(
        twoChanges.replace('because: trail-side }', 'because: trail-side, proof: flight.apex > 20 m }'),
      ),
    };
    withFolder({ ...planFiles, ...texts }, (folder) => {
      for (const [name, text] of Object.entries(texts)) {
        const analysis = analysed(text, { files: planFiles, name });
        const { subject, account } = analysis;
        const proposes = name.startsWith('proposed');
        const args = ['plan', name, '--write', ...(proposes ? ['--propose'] : [])];
        assert.equal(swingwright(args, folder).code, 0);
        const table = lineTableOf(text);
        const edits = proposes
          ? proposedPlanEdits(analysis, proposalOf(subject, account, () => undefined)!.changes)
          : storePrediction(analysis, table, everywhere)[0]!.edits.map(({ span, text: newText }) => ({
              range: rangeOf(table, span),
              newText,
            }));
        assert.equal(
          readFileSync(join(folder, name), 'utf8'),
          TextDocument.applyEdits(
            TextDocument.create(name, 'yaml', 1, text),
            [...edits].map(({ range, newText }) => ({ range: { ...range }, newText })),
          ),
        );
      }
      assert.match(readFileSync(join(folder, 'stated.swing.yaml'), 'utf8'), /^ {2}flight\.apex: /m);
    });
  });

  it('leaves a plan that is there alone until it is told to replace it', () => {
    withFolder({ ...files, 'stated.swing.yaml': `${stated}notes: kept\n` }, (folder) => {
      const at = join(folder, 'stated.swing.yaml');
      const once = readFileSync(at, 'utf8');
      const { code, out, err } = swingwright(['plan', 'stated.swing.yaml', '--propose', '--write'], folder);
      assert.equal(code, 2);
      assert.match(out, /^Proposed\n/);
      assert.match(err, /`stated\.swing\.yaml` has a plan of 1 change already.*`--replace`/);
      assert.equal(readFileSync(at, 'utf8'), once);
      const again = swingwright(['plan', 'stated.swing.yaml', '--propose', '--write', '--replace'], folder);
      assert.equal(again.code, 0, again.err);
      const replaced = readFileSync(at, 'utf8');
      assert.ok(!replaced.includes('flight.apex > 20 m'));
      assert.match(replaced, /\nplan:\n {2}- change: [^]*\nnotes: kept\npredicted:\n/);
    });
  });

  it('says so where there is no plan, no goal, nothing to propose', () => {
    withFolder(files, (folder) => {
      assert.deepEqual(swingwright(['plan', 'bare.swing.yaml'], folder), {
        code: 0,
        out: 'No plan and no goals.\n',
        err: '',
      });
      const { code, out } = swingwright(['plan', 'bare.swing.yaml', '--propose', '--write'], folder);
      assert.equal(code, 1);
      assert.match(out, /Nothing to propose: there is no goal;/);
      assert.equal(readFileSync(join(folder, 'bare.swing.yaml'), 'utf8'), bare);
    });
  });

  it('ends with 0 where every goal is met, and with 2 where too little is known to tell', () => {
    const met = `${bare}goals: [{ start: 20 deg left..20 deg right }]\n`;
    const unknown = `${bare.replace(/delivery: .*\n/, '')}goals: [{ carry: 140 m, finish: 8 m left..8 m right }]\n`;
    withFolder({ ...files, 'met.swing.yaml': met, 'unknown.swing.yaml': unknown }, (folder) => {
      const good = swingwright(['plan', 'met.swing.yaml', '--propose', '--write'], folder);
      assert.match(good.out, /every goal is more likely met than not/);
      assert.equal(good.code, 0);
      assert.equal(readFileSync(join(folder, 'met.swing.yaml'), 'utf8'), met);
      const little = swingwright(['plan', 'unknown.swing.yaml', '--propose'], folder);
      assert.match(little.out, /says too little to tell how its goals stand/);
      assert.equal(little.code, 2);
    });
  });

  it('ends with 2 where the record cannot be read or is none', () => {
    withFolder(files, (folder) => {
      assert.equal(swingwright(['plan', 'nowhere.swing.yaml'], folder).code, 2);
      // A student's file is none of a swing.
      const { code, out, err } = swingwright(['plan', 'ansa.student.yaml'], folder);
      assert.deepEqual([code, out], [2, '']);
      assert.match(err, /`?ansa\.student\.yaml`?/);
    });
  });

  it('lists what it leaves out, with place and reason', () => {
    const broken = `${bare}misses: [slice]
goals: [{ carry: 12 bananas }]
plan:
  - { change: delivery.face_to_path, to: 0 deg ± 0.5 deg, because: slice }
  - { change: checkpoints.address.stance_width, by: 5 cm narrower, because: slice }
  - { change: delivery.attack, to: about 3, because: slice }
  - { change: delivery.path, because: slice }
  - just words
  -
`;
    withFolder({ ...files, 'broken.swing.yaml': broken }, (folder) => {
      const { code, out } = swingwright(['plan', 'broken.swing.yaml'], folder);
      assert.equal(code, 0);
      const [list = '', first = ''] = out.split('\n\n');
      assert.deepEqual(
        list.split('\n').map((line) => line.replace(/(: \S+ \S+ \S+).*/, '$1')),
        [
          'Not understood, and left out',
          '  line 8, column 21: Found `bananas`; expected',
          '  line 11, column 49: Found the key',
          '  line 12, column 36: Found `about`; expected',
          '  line 13, column 5: The change of',
          '  line 14, column 5: Found `just words`;',
        ],
      );
      assert.match(first, /^delivery\.face_to_path\n/);
      const json = JSON.parse(swingwright(['plan', 'broken.swing.yaml', '--format', 'json'], folder).out) as {
        notUnderstood: readonly { line: number; column: number; reason: string }[];
      };
      assert.deepEqual(
        json.notUnderstood.map(({ line, column }) => [line, column]),
        [
          [8, 21],
          [11, 49],
          [12, 36],
          [13, 5],
          [14, 5],
        ],
      );
    });
  });

  it('leaves nothing out of a plan that can be read', () => {
    withFolder(files, (folder) => {
      assert.doesNotMatch(swingwright(['plan', 'stated.swing.yaml'], folder).out, /Not understood/);
    });
  });

  it('lists it too where there is nothing else to say', () => {
    const little = 'swing: 1\nplan: [{ change: delivery.attak, to: 3 deg down }]\n';
    withFolder({ 'little.swing.yaml': little }, (folder) => {
      const { out } = swingwright(['plan', 'little.swing.yaml'], folder);
      assert.match(out, /^Not understood, and left out\n {2}line 2, column 18: Found `delivery\.attak`/);
    });
  });

  it('foresees nothing of what cannot be, and says so', () => {
    const beyond = `${bare}goals: [{ carry: 900 m }]
plan: [{ change: delivery.path, to: 1e30 deg right, because: carry }]
`;
    withFolder({ ...files, 'beyond.swing.yaml': beyond }, (folder) => {
      const { out } = swingwright(['plan', 'beyond.swing.yaml'], folder);
      assert.match(out, /line 7, column 18: Carry 900 m is outside what is possible/);
      assert.match(out, /line 8, column 37: Club path .* is outside what is possible/);
      assert.doesNotMatch(out, /^(?:delivery|Goals)/m);
    });
  });
});
