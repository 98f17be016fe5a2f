// Rewrites at the cursor change how a thing is written and not what it says; each case is the text before, the title and the text after.
import assert from 'node:assert/strict';
import { rewritesAt } from '../../src/language/rewrites.ts';
import type { Rewrite } from '../../src/language/rewrite.ts';
import { applied } from '../checks/files.ts';
import { marked } from '../marked.ts';
import { analysed, student } from './analysed.ts';

const template = `template: 1
clubs: [hybrid]
checkpoints:
  address:
    stance_width: { window: 42..58 cm }
    head: { window: 2..9 cm behind }
  impact: { lead_pressure: { window: 60..95 % } }
delivery:
  low_point: { ahead: { window: 3..9 cm ahead } }
`;
const files = { 'mira.student.yaml': student, 'hybrid.template.yaml': template };

function offered(source: string): { readonly text: string; readonly rewrites: readonly Rewrite[] } {
  const { text, position } = marked(source);
  return { text, rewrites: rewritesAt(analysed(text, { files }), { start: position, end: position }) };
}

/** The rewrite whose title begins so, applied. */
function rewritten(source: string, title: string): string {
  const { text, rewrites } = offered(`swing: 1\n${source}`);
  const found = rewrites.find((rewrite) => rewrite.title.startsWith(title));
  assert.ok(found, `${title} is not among ${rewrites.map((rewrite) => rewrite.title).join('; ')}`);
  const edits = found.edits.map((edit) => ({ uri: '', ...edit }));
  return applied(text, edits).slice('swing: 1\n'.length);
}

function assertRewritten(title: string, cases: readonly (readonly [string, string])[]): void {
  for (const [before, after] of cases) assert.equal(rewritten(before, title), after);
}

function assertNotOffered(title: string, sources: readonly string[]): void {
  for (const source of sources) {
    const titles = offered(`swing: 1\n${source}`).rewrites.map((rewrite) => rewrite.title);
    assert.deepEqual(
      titles.filter((other) => other.startsWith(title)),
      [],
      source,
    );
  }
}

describe('converting a unit', () => {
  // The yard is 0.9144 m, the inch 25.4 mm, the mile per hour 0.44704 m/s: NIST SP 811 (2008), Appendix B.8.
  it('keeps the digits that the uncertainty supports, and converts that too', () => {
    assertRewritten('Convert to yd', [
      ['flight: { carry: 171$0 m ± 6 m }\n', 'flight: { carry: 187 yd ± 7 yd }\n'],
      ['flight:\n  carry: 171.2$0 m ± 0.4 m # far\n', 'flight:\n  carry: 187.2 yd ± 0.4 yd # far\n'],
      ['flight:\n  carry: ~171 ± 10 m$0 by eye\n', 'flight:\n  carry: ~187 ± 11 yd by eye\n'],
      ['flight:\n  curve: 14$0 ± 2 m right\n', 'flight:\n  curve: 15.3 ± 2.2 yd right\n'],
    ]);
    assertRewritten('Convert to in', [
      [
        'strike: { across: 4 mm$0 toward heel ± 3 mm }\n',
        'strike: { across: 0.16 in toward heel ± 0.12 in }\n',
      ],
    ]);
    assertRewritten('Convert to mph', [
      ['delivery:\n  club_speed: 41 m/s$0 by radar\n', 'delivery:\n  club_speed: 91.7 mph by radar\n'],
    ]);
  });

  it('converts a bare number from the own unit of the quantity, and one below the key', () => {
    assertRewritten('Convert to in', [
      [
        'checkpoints:\n  address:\n    stance_width: 47$0 ± 2\n',
        'checkpoints:\n  address:\n    stance_width: 18.5 in ± 0.8\n',
      ],
      [
        'checkpoints:\n  address:\n    stance_width:\n      value: 47$0 cm\n      give_or_take: 2\n',
        'checkpoints:\n  address:\n    stance_width:\n      value: 18.5 in\n      give_or_take: 0.8\n',
      ],
    ]);
  });

  it('does not take the zero of a temperature for that of another', () => {
    assertRewritten('Convert to °F', [
      ['conditions:\n  temperature: 14 °C$0 ± 2 °C\n', 'conditions:\n  temperature: 57 °F ± 4 °F\n'],
    ]);
  });

  it('converts windows, at both ends', () => {
    assertRewritten('Convert to yd', [
      [
        'goals:\n  - { finish: 4 m left..3$0 m right }\n',
        'goals:\n  - { finish: 4.4 yd left..3.3 yd right }\n',
      ],
      ['goals:\n  - { finish: -4..3$0 m }\n', 'goals:\n  - { finish: -4.4..3.3 yd }\n'],
    ]);
  });

  it('is not offered where nobody in the trade would, nor where quotes hide the number', () => {
    assertNotOffered('Convert', [
      'delivery:\n  attack: 3 deg$0 down\n',
      'checkpoints: { address: { lead_pressure: 50 %$0 } }\n',
      'flight:\n  carry: "1\\u0037\\u0031 m$0"\n',
    ]);
  });
});

describe('turning a sign into a word and back', () => {
  it('writes the word for a sign, and the sign for a word', () => {
    assertRewritten('Write with a direction word', [
      ['delivery:\n  path: -3.50$0 deg by radar\n', 'delivery:\n  path: 3.50 deg left by radar\n'],
      ['delivery:\n  path: { value: +3$0 }\n', 'delivery:\n  path: { value: 3 right }\n'],
      ['goals:\n  - { start: -2..3$0 deg }\n', 'goals:\n  - { start: 2 deg left..3 deg right }\n'],
      ['goals:\n  - { start: -5..-2$0 deg }\n', 'goals:\n  - { start: 2..5 deg left }\n'],
    ]);
    assertRewritten('Write with a sign', [
      ['delivery:\n  path: 3.50$0 deg left ± 1 deg\n', 'delivery:\n  path: -3.50 deg ± 1 deg\n'],
      ['delivery:\n  path: 3$0 ± 1 deg right # in\n', 'delivery:\n  path: +3 ± 1 deg # in\n'],
    ]);
    assertRewritten('Write with signs', [
      ['goals:\n  - { start: 2..5$0 deg left }\n', 'goals:\n  - { start: -5..-2 deg }\n'],
      ['goals:\n  - { start: 2 deg left..3$0 deg right }\n', 'goals:\n  - { start: -2..+3 deg }\n'],
    ]);
  });

  it('is not offered for zero, for the side that the wind comes from, and for what has no side', () => {
    assertNotOffered('Write with', [
      'delivery:\n  path: 0 deg$0\n',
      'conditions: { wind: 3 m/s$0 from left }\n',
      'flight: { carry: 171$0 m }\n',
    ]);
  });
});

describe('turning the form', () => {
  it('writes the long form on the same line, whatever stands around', () => {
    assertRewritten('Write in the long form', [
      ['flight:\n  carry: 120m$0\n', 'flight:\n  carry: { value: 120 m }\n'],
      [
        'delivery:\n  path: 3 deg$0 left ± 1 deg by radar # c\n',
        'delivery:\n  path: { value: 3 deg left, give_or_take: 1 deg, by: radar } # c\n',
      ],
      [
        'delivery: { path: ~3$0 ± 1 deg left }\n',
        'delivery: { path: { value: ~3 deg left, give_or_take: 1 deg } }\n',
      ],
      [
        'delivery:\n  face: [1 deg right$0 by radar, 2 deg right by eye]\n',
        'delivery:\n  face: [{ value: 1 deg right, by: radar }, 2 deg right by eye]\n',
      ],
    ]);
  });

  it('writes the short form of a mapping between braces, below its key, and in a list', () => {
    assertRewritten('Write in the short form', [
      [
        'delivery:\n  path: { value: 3 deg left$0, by: radar } # c\n',
        'delivery:\n  path: 3 deg left by radar # c\n',
      ],
      [
        'delivery:\n  path:\n    value: 3 deg left$0 # c\n    give_or_take: 1 deg\n  face: 0 deg\n',
        'delivery:\n  path: 3 deg left ± 1 deg # c\n  face: 0 deg\n',
      ],
      [
        'delivery:\n  face:\n    - 1 deg right # a\n    - value: 2 deg right$0\n      by: eye\n  path: 0 deg\n',
        'delivery:\n  face:\n    - 1 deg right # a\n    - 2 deg right by eye\n  path: 0 deg\n',
      ],
    ]);
  });

  it('is not offered where the short form could not say all, or a comment would lose its place', () => {
    assertNotOffered('Write in the short form', [
      'delivery:\n  path: { value: 3 deg left$0, note: wet grip }\n',
      'delivery:\n  path: { value: 3 deg left$0, doubtful: true }\n',
      'delivery:\n  path: { value: 3 deg left$0, nte: wet grip }\n',
      'delivery:\n  path: # a\n    value: 3 deg left$0\n',
      'delivery:\n  path:\n    value: 3 deg left$0 # a\n    by: radar # b\n',
    ]);
  });
});

describe('writing how sure a number is', () => {
  it('begins with what is in force', () => {
    assertRewritten('Write how sure it is', [
      [
        'delivery:\n  path: 3 deg left$0 by goniometer\n',
        'delivery:\n  path: 3 deg left ± 2 deg by goniometer\n',
      ],
      ['flight: { carry: 171$0 }\n', 'flight: { carry: 171 ± 6 m }\n'],
      ['flight: { carry: { value: 171 m$0 } }\n', 'flight: { carry: { value: 171 m, give_or_take: 6 m } }\n'],
      [
        'flight:\n  carry:\n    value: 171 m$0 # far\n    give_or_take:\n',
        'flight:\n  carry:\n    value: 171 m # far\n    give_or_take: 6 m\n',
      ],
      [
        'flight:\n  carry:\n    value: 171 m$0 # far\n    note: wet\n',
        'flight:\n  carry:\n    value: 171 m # far\n    give_or_take: 6 m\n    note: wet\n',
      ],
    ]);
    assertNotOffered('Write how sure it is', ['flight: { carry: 171$0 m ± 2 m }\n']);
  });

  it('writes what the workspace counts as several standard uncertainties', () => {
    const { text, position } = marked('swing: 1\nflight: { carry: 171$0 m }\n');
    const analysis = analysed(text, { files: { 'swingwright.yaml': 'swingwright: 1\ncoverage: 2\n' } });
    const titles = rewritesAt(analysis, { start: position, end: position }).map(({ title }) => title);
    assert.ok(titles.includes('Write how sure it is: `± 12 m`'), titles.join('; '));
  });
});

describe('adding what the template asks for', () => {
  const head = 'template: hybrid.template.yaml\n';
  it('brings braces of its own for a key without a value between braces', () => {
    assertRewritten('Add what the template asks for', [
      [`${head}checkpoints: { im$0pact: }\n`, `${head}checkpoints: { impact: { lead_pressure: } }\n`],
      [
        `${head}checkpoints: { im$0pact: , address: }\n`,
        `${head}checkpoints: { impact: { lead_pressure: } , address: }\n`,
      ],
    ]);
  });

  it('adds the keys that are not there, in the way of their surroundings', () => {
    assertRewritten('Add what the template asks for', [
      [
        `${head}checkpoints:\n  addr$0ess:\n    head: 4 cm behind # h\n  top:\n`,
        `${head}checkpoints:\n  address:\n    head: 4 cm behind # h\n    stance_width:\n  top:\n`,
      ],
      [
        `${head}checkpoints:\n    addr$0ess:\n`,
        `${head}checkpoints:\n    address:\n        stance_width:\n        head:\n`,
      ],
      [
        `${head}checkpoints: { addr$0ess: { head: 4 cm behind } }\n`,
        `${head}checkpoints: { address: { head: 4 cm behind, stance_width: } }\n`,
      ],
      [
        `${head}checkpoints:\n  addr$0ess: {}\n`,
        `${head}checkpoints:\n  address: { stance_width: , head: }\n`,
      ],
      [`${head}deliv$0ery:\n  path: 0 deg\n`, `${head}delivery:\n  path: 0 deg\n  low_point:\n    ahead:\n`],
      [
        `${head}check$0points:\n  address:\n    head: 4 cm behind\n    stance_width:`,
        `${head}checkpoints:\n  address:\n    head: 4 cm behind\n    stance_width:\n  impact:\n    lead_pressure:`,
      ],
    ]);
  });

  it('names the keys by the way to them', () => {
    assertRewritten('Add what the template asks for here: `low_point.ahead`', [
      [`${head}deliv$0ery:\n  path: 0 deg\n`, `${head}delivery:\n  path: 0 deg\n  low_point:\n    ahead:\n`],
    ]);
  });

  it('is not offered where all is there, or there is no template', () => {
    assertNotOffered('Add what', [
      'checkpoints:\n  addr$0ess:\n    head: 4 cm behind\n',
      `${head}checkpoints:\n  addr$0ess:\n    head: 4 cm behind\n    stance_width:\n`,
      `${head}checkpoints:\n  t$0op:\n`,
    ]);
  });
});

describe('rewrites', () => {
  it('are of one thing: a selection over several is left alone', () => {
    const text = 'swing: 1\nflight:\n  carry: 171 m\n  start: 1 deg right\n';
    const range = { start: { line: 2, character: 4 }, end: { line: 3, character: 4 } };
    assert.deepEqual(rewritesAt(analysed(text), range), []);
  });
});
