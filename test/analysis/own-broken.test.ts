// What a workspace declares in a way that cannot be read is not known, but nobody's use of it is taken for a slip.
import assert from 'node:assert/strict';
import { mendsOf, waitingMends } from '../../src/analysis/mends.ts';
import type { Analysis } from '../../src/analysis/result.ts';
import { analyseFiles, messageOf } from '../checks/files.ts';

/** Ids one letter from built-in or other own ones, so that a slip would be seen in each. */
const breaks: readonly (readonly [string, string])[] = [
  ['a misspelt word after `like`', 'delivery.pathe: { like: delivery.pth }'],
  ['a misspelt key `like`', 'delivery.pathe: { liek: delivery.path }'],
  ['a unit that nobody knows', 'delivery.pathe: { unit: dgr, bounds: 0..9 deg, uncertainty: 1 deg }'],
  ['bounds that cannot be read', 'delivery.pathe: { unit: deg, bounds: nine, uncertainty: 1 deg }'],
  ['no bounds', 'delivery.pathe: { unit: deg, uncertainty: 1 deg }'],
  ['nothing yet', 'delivery.pathe:'],
  ['a word in the place of its fields', 'delivery.pathe: soon'],
];

const users = {
  'a.swing.yaml': `swing: 1
delivery: { pathe: 3 deg }
plan: [{ change: delivery.pathe, to: 1 deg, because: fun, proof: delivery.pathe < 2 deg }]
`,
  'a.template.yaml': 'template: 1\ndelivery: { pathe: 0..2 deg }\n',
  'a.faults.yaml': `faults: 1
book:
  wide:
    evidence: delivery.pathe > 3 deg
    tends_to: [{ effect: delivery.pathe, direction: more }]
    changes: [{ change: delivery.pathe, to: 1 deg }]
`,
} as const;

const named = (analysis: Analysis): readonly string[] =>
  analysis.findings.flatMap(({ message, fixes }) =>
    message.includes('pathe') ? fixes.map(({ title }) => title) : [],
  );

describe('an own quantity whose declaration cannot be read', () => {
  for (const [what, declaration] of breaks)
    it(`is renamed nowhere: ${what}`, () => {
      const workspace = `swingwright: 1\nquantities:\n  ${declaration}\n  delivery.other: { like: delivery.pathe }
checks: { wide: { when: delivery.pathe > 1 deg, message: "{delivery.pathe}" } }
show: { delivery.pathe: rad }
`;
      for (const [name, text] of Object.entries(users)) {
        const analysis = analyseFiles({ [name]: text, 'swingwright.yaml': workspace });
        assert.ok(
          analysis.findings.some(({ message }) => message.includes('pathe')),
          name,
        );
        assert.deepEqual(named(analysis), [], name);
        assert.deepEqual(
          mendsOf(analysis, (code) => code !== 'bare-number').map(({ fix }) => fix.title),
          [],
        );
        assert.ok(
          analysis.findings.some(({ message }) => message.includes('its declaration in `swingwright.yaml`')),
        );
      }
      const own = analyseFiles({ 'swingwright.yaml': workspace });
      assert.deepEqual(named(own), []);
    });

  it('is not taken for another where it has no number of its own either', () => {
    const workspace = 'swingwright: 1\nderived: { delivery.pathe: { like: delivery.path } }\n';
    assert.deepEqual(named(analyseFiles({ ...users, 'swingwright.yaml': workspace })), []);
  });

  it('is said of the key of a checkpoint, of a mapping and of a column too', () => {
    const workspace = `swingwright: 1
quantities:
  checkpoints.hedd: { like: checkpoints.nothing, at: [top] }
  delivery.path_of.hands: { like: nothing }
  flight.cary: { like: nothing }
shots: { columns: { Far: flight.cary } }
`;
    const lesson = `swing: 1
checkpoints: { top: { hedd: 3 cm ahead }, impact: { hedd: 3 cm ahead } }
delivery: { path_of: { hands: 3 deg } }
flight: { cary: 100 m }
shots: [{ cary: 100 m }]
`;
    const analysis = analyseFiles({ 'a.swing.yaml': lesson, 'swingwright.yaml': workspace });
    const unknown = analysis.findings.filter(({ code }) => code === 'unknown-key');
    assert.equal(unknown.length, 5);
    for (const { message, fixes } of unknown) {
      assert.match(message, /expected its declaration in `swingwright\.yaml` to be whole\.$/);
      assert.deepEqual(fixes, []);
    }
    const own = analyseFiles({ 'swingwright.yaml': workspace });
    const column = own.findings.filter(({ message }) => message.includes('cary'));
    assert.deepEqual(column, []);
  });

  it('is one finding in its own file, however often it is used there', () => {
    const workspace = `swingwright: 1
quantities:
  delivery.pathe: { like: delivery.fac }
  delivery.other: { like: delivery.pathe }
  flight.cary: { like: delivery.pathe }
derived: { delivery.sum: { unit: deg, bounds: 0..9 deg, uncertainty: 1 deg, is: delivery.pathe + delivery.other } }
relations: { alike: { says: delivery.pathe ≈ delivery.path ± 1 deg } }
checks: { wide: { when: delivery.pathe > 1 deg, at: delivery.other, message: "{delivery.pathe}" } }
show: { delivery.pathe: rad }
shots: { columns: { Far: flight.cary } }
methods: { radar: { uncertainty: { delivery.pathe: 1 deg } } }
`;
    const { findings } = analyseFiles({ 'swingwright.yaml': workspace });
    assert.deepEqual(
      findings.map(({ code, range }) => [code, range.start.line]),
      [['unknown-word', 2]],
    );
    assert.match(findings[0]!.message, /`delivery\.fac`, perhaps meant as `delivery\.face`/);
  });

  it('is said at each use where the declaration says nothing itself', () => {
    const workspace =
      'swingwright: 1\nquantities:\n  delivery.pathe:\nshow: { delivery.pathe: rad }\nchecks: { wide: { when: delivery.pathe > 1 deg, message: Wide } }\n';
    const { findings } = analyseFiles({ 'swingwright.yaml': workspace });
    const used = findings.filter(({ code }) => code === 'unknown-word' || code === 'unknown-quantity');
    assert.equal(used.length, 2);
  });

  it('still lets a real slip be mended', () => {
    const workspace =
      'swingwright: 1\nquantities: { delivery.wobble: { like: delivery.path }, delivery.shake: { like: x } }\n';
    const analysis = analyseFiles({
      'a.swing.yaml': 'swing: 1\ndelivery: { woble: 3 deg right }\n',
      'swingwright.yaml': workspace,
    });
    assert.match(messageOf(analysis, 'unknown-key'), /expected `wobble`/);
  });
});

describe('the mend of a name', () => {
  const book = (id: string): string => `faults: 1\nbook:\n  open: { title: Open, evidence: ${id} > 3 deg }\n`;
  const suggestions = (id: string, workspace: string): readonly string[] =>
    analyseFiles({ 'a.faults.yaml': book(id), 'swingwright.yaml': workspace })
      .findings.filter(({ code }) => code === 'unknown-quantity')
      .flatMap(({ fixes }) => fixes.map(({ title }) => title));

  it('takes no unlike word for another, whatever section both stand in', () => {
    for (const id of [
      'delivery.wand',
      'delivery.zork',
      'delivery.rod',
      'flight.qqq',
      'checkpoints.impact.wand',
    ])
      assert.deepEqual(suggestions(id, 'swingwright: 1\n'), [], id);
  });

  it('finds the nearest key by key', () => {
    const workspace = 'swingwright: 1\nquantities: { delivery.wand: { like: delivery.path } }\n';
    for (const [slip, right] of [
      ['delivery.Wand', 'delivery.wand'],
      ['delivery.pth', 'delivery.path'],
      ['delivry.fase', 'delivery.face'],
      ['checkpoints.imapct.shaft_leen', 'checkpoints.impact.shaft_lean'],
      ['low_point.ahead', 'delivery.low_point.ahead'],
    ] as const)
      assert.deepEqual(suggestions(slip, workspace), [`Write \`${right}\``], slip);
  });

  it('waits as long as the workspace file cannot be read whole', () => {
    const [own, near] = ['delivery.fade', 'delivery.face'];
    const text = `swingwright: 1\nquantites: { ${own}: { like: ${near} } }\nchecks: { open: { when: ${own} > 3 deg, message: Open } }\n`;
    const all = (): boolean => true;
    const user = analyseFiles({ 'a.faults.yaml': book(own), 'swingwright.yaml': text });
    assert.deepEqual(mendsOf(user, all), []);
    assert.deepEqual(
      waitingMends(user, all).map(({ fix }) => fix.title),
      [`Write \`${near}\``],
    );
    const workspace = analyseFiles({ 'swingwright.yaml': text });
    assert.deepEqual(
      mendsOf(workspace, all).map(({ fix }) => fix.title),
      ['Write `quantities`'],
    );
    const mended = text.replace('quantites', 'quantities');
    assert.deepEqual(
      mendsOf(analyseFiles({ 'a.faults.yaml': book(own), 'swingwright.yaml': mended }), all),
      [],
    );
  });
});

describe('an own check that cannot be read', () => {
  it('is not taken for another where a comment or a severity names it', () => {
    const workspace = `swingwright: 1
severities: { own/too-wide: hint }
checks:
  too-wide: { message: Wide }
  too-wild: { when: delivery.path > 9 deg, message: Wild }
`;
    const own = analyseFiles({ 'swingwright.yaml': workspace });
    const lesson = 'swing: 1\ndelivery:\n  path: 1 deg right # accept[own/too-wide]: so be it\n';
    const used = analyseFiles({ 'a.swing.yaml': lesson, 'swingwright.yaml': workspace });
    for (const { findings } of [own, used]) {
      const [found, ...more] = findings.filter(({ code }) => code === 'unknown-code');
      assert.deepEqual([found?.fixes, more], [[], []]);
      assert.match(found!.message, /its declaration/);
    }
  });
});
