// Merging two edits of one file: as a person would, nothing lost, marks only where both changed one thing.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { parse } from 'yaml';
import { merge, type Merged } from '../../src/record/merge.ts';
import { piecesOf, printPieces } from '../../src/record/pieces.ts';
import { yamlSamples } from '../samples.ts';

function merged(base: string, ours: string, theirs: string): Merged {
  const result = merge({ base, ours, theirs, names: ['ours', 'theirs'], markLength: 7 });
  assert.ok(result, 'cannot be merged by key');
  return result;
}

const lesson = `# Two lessons in one.
swing: 1
date: 2026-05-14   # a Thursday
club: hybrid

checkpoints:
  # before the ball
  address: { stance_width: 47 cm by tape, lead_pressure: 50 % }
  impact:
    shaft_lean: 9 deg forward   # by the phone
    lead_pressure: { value: 66 %, by: pressure mat }
delivery:
  attack: 3.5 deg down
  path: 5 deg right
  face: [1 deg right by radar, 3 deg right by eye]
faults:
  - { fault: hangs-back, at: impact, note: "stays, until late" }
  - fault: face-open
    note: seldom
plan: []
`;

const change = (from: string | RegExp, to: string, text = lesson): string => {
  const changed = text.replace(from, to);
  assert.notEqual(changed, text);
  return changed;
};

describe('cutting a file into keys', () => {
  for (const [path, text] of yamlSamples)
    it(`gives ${path} back as it was`, () => {
      const pieces = piecesOf(text);
      assert.ok(pieces);
      assert.equal(printPieces(pieces), text);
    });

  it('gives any text back as it was, or does not cut it', () => {
    const bits = fc.constantFrom(
      'a: 1\n',
      '  b: 2\n',
      '- c\n',
      '# d\n',
      '{ e: 1, f: }',
      '\r\n',
      '\n',
      ': ',
      '"g: h": i\n',
      '  - j: k\n    l: m\n',
      '? n\n',
      '&o p',
      '| \n  q\n',
      '[1,2]',
      '\t',
    );
    let cut = 0;
    fc.assert(
      fc.property(fc.array(bits, { maxLength: 12 }), (parts) => {
        const text = parts.join('');
        const pieces = piecesOf(text);
        if (pieces === undefined) return;
        cut += 1;
        assert.equal(printPieces(pieces), text.endsWith('\n') ? text : `${text}\n`);
      }),
      { numRuns: 3000 },
    );
    assert.ok(cut > 50, `${cut} were cut`);
  });
});

describe('merging', () => {
  it('keeps both changes of neighbouring keys, on one line too', () => {
    const { text, conflicts } = merged(
      lesson,
      change('47 cm by tape', '45 cm by tape', change('3.5 deg down', '4 deg down')),
      change('lead_pressure: 50 %', 'lead_pressure: 52 %', change('5 deg right', '6 deg right')),
    );
    assert.equal(conflicts, 0);
    assert.match(text, /address: \{ stance_width: 45 cm by tape, lead_pressure: 52 % \}/);
    assert.match(text, /attack: 4 deg down\n {2}path: 6 deg right/);
    assert.equal(text.length, lesson.length - '.5'.length);
  });

  it('marks one value that both changed, and nothing else', () => {
    const { text, conflicts } = merged(
      lesson,
      change('3.5 deg down', '4 deg down'),
      change('3.5 deg down', '5 deg down', change('50 %', '52 %')),
    );
    assert.equal(conflicts, 1);
    assert.match(
      text,
      /^delivery:\n<<<<<<< ours\n {2}attack: 4 deg down\n=======\n {2}attack: 5 deg down\n>>>>>>> theirs\n {2}path: 5 deg right\n/m,
    );
    assert.match(text, /52 %/);
  });

  it('marks the line where both changed one value between braces, each side with what the other changed beside', () => {
    const { text, conflicts } = merged(
      lesson,
      change('47 cm by tape, lead_pressure: 50 %', '45 cm by tape, lead_pressure: 51 %'),
      change('47 cm by tape', '44 cm by tape'),
    );
    assert.equal(conflicts, 1);
    assert.match(
      text,
      /<<<<<<< ours\n {2}# before the ball\n {2}address: \{ stance_width: 45 cm by tape, lead_pressure: 51 % \}\n=======\n {2}# before the ball\n {2}address: \{ stance_width: 44 cm by tape, lead_pressure: 51 % \}\n>>>>>>> theirs\n/,
    );
  });

  it('takes in what both added, ours first', () => {
    const { text, conflicts } = merged(
      lesson,
      change(
        '  path: 5',
        '  loft: 20 deg\n  path: 5',
        change('plan: []', 'plan:\n  - change: delivery.path\n    to: 3 deg right'),
      ),
      change(
        '  path: 5',
        '  # new\n  closure: 3\n  path: 5',
        change('note: seldom\n', 'note: seldom\n  - { fault: arm-folds }\n'),
      ),
    );
    assert.equal(conflicts, 0);
    assert.match(text, /attack: 3\.5 deg down\n {2}loft: 20 deg\n {2}# new\n {2}closure: 3\n {2}path/);
    assert.match(
      text,
      /note: seldom\n {2}- \{ fault: arm-folds \}\nplan:\n {2}- change: delivery\.path\n {4}to: 3 deg right\n$/,
    );
  });

  it('knows items of lists by what they are about', () => {
    const { text, conflicts } = merged(
      lesson,
      change('note: seldom', 'note: often'),
      change('  - { fault: hangs-back, at: impact, note: "stays, until late" }\n', ''),
    );
    assert.equal(conflicts, 0);
    assert.match(text, /faults:\n {2}- fault: face-open\n {4}note: often\nplan/);
    const readings = merged(
      lesson,
      change('1 deg right by radar', '2 deg right by radar'),
      change('3 deg right by eye', '4 deg right by eye'),
    );
    assert.equal(readings.conflicts, 0);
    assert.match(readings.text, /face: \[2 deg right by radar, 4 deg right by eye\]/);
    assert.equal(
      merged(lesson, change('1 deg right by radar', '2 deg right'), change('1 deg right by radar', '0 deg'))
        .conflicts,
      1,
    );
  });

  it('marks what one side changed and the other took out', () => {
    const { text, conflicts } = merged(
      lesson,
      change('  attack: 3.5 deg down\n', ''),
      change('3.5 deg down', '4 deg down'),
    );
    assert.equal(conflicts, 1);
    assert.match(text, /<<<<<<< ours\n=======\n {2}attack: 4 deg down\n>>>>>>> theirs/);
  });

  it('takes another form and another order along with values that the other side changed', () => {
    const block = change(
      'address: { stance_width: 47 cm by tape, lead_pressure: 50 % }',
      'address:\n    stance_width: 47 cm by tape\n    lead_pressure: 50 %',
    );
    const { text, conflicts } = merged(lesson, block, change('50 %', '52 %'));
    assert.equal(conflicts, 0);
    assert.match(text, / {4}stance_width: 47 cm by tape\n {4}lead_pressure: 52 %\n/);
    const moved = change(
      'delivery:\n  attack: 3.5 deg down\n  path: 5 deg right\n',
      'delivery:\n  path: 5 deg right\n  attack: 3.5 deg down\n',
    );
    const other = merged(lesson, moved, change('3.5 deg down', '4 deg down'));
    assert.equal(other.conflicts, 0);
    assert.match(other.text, /path: 5 deg right\n {2}attack: 4 deg down/);
  });

  it('merges comments as it merges values, and keeps line ends', () => {
    const { text, conflicts } = merged(
      lesson.replaceAll('\n', '\r\n'),
      change('# a Thursday', '# a fine Thursday').replaceAll('\n', '\r\n'),
      change('2026-05-14', '2026-05-15').replaceAll('\n', '\r\n'),
    );
    assert.equal(conflicts, 0);
    assert.match(text, /date: 2026-05-15 {3}# a fine Thursday\r\n/);
    assert.equal(text.replaceAll('\r\n', '').includes('\n'), false);
  });

  it('is left to lines where YAML cannot be read', () => {
    const wish = { ours: lesson, theirs: lesson, names: ['o', 't'], markLength: 7 } as const;
    assert.equal(merge({ ...wish, base: 'a: "b' }), undefined);
    assert.equal(merge({ ...wish, theirs: '- a list\n', base: lesson }), undefined);
  });
});

// ---- Random pairs of edits: a record as data, edits of the data, and the text of each.

interface Entry {
  readonly key: string;
  readonly value: string;
  readonly comment?: string;
}
interface Section {
  readonly name: string;
  readonly style: 'block' | 'flow';
  readonly entries: readonly Entry[];
}
interface Item {
  readonly fault: string;
  readonly note: string;
}
interface Model {
  readonly sections: readonly Section[];
  readonly faults: readonly Item[];
}

const begin: Model = {
  sections: ['delivery', 'ground', 'strike', 'flight'].map((name, i) => ({
    name,
    style: i % 2 === 0 ? 'block' : 'flow',
    entries: ['a', 'b', 'c', 'd'].map((key, j) => ({
      key: `${name}_${key}`,
      value: `${i}${j} deg right`,
      ...(i === 0 && j < 2 ? { comment: `${name} ${key} as it was` } : {}),
    })),
  })),
  faults: ['hangs-back', 'face-open', 'arm-folds'].map((fault) => ({ fault, note: `${fault} seen` })),
};

function textOf({ sections, faults }: Model): string {
  const section = ({ name, style, entries }: Section): string =>
    style === 'flow'
      ? `${name}: { ${entries.map(({ key, value }) => `${key}: ${value}`).join(', ')} }\n`
      : `${name}:\n${entries.map(({ key, value, comment }) => `  ${key}: ${value}${comment === undefined ? '' : `  # ${comment}`}\n`).join('')}`;
  const items = faults.map(({ fault, note }) => `  - fault: ${fault}\n    note: ${note}\n`).join('');
  return `swing: 1\n${sections
    .filter(({ entries }) => entries.length > 0)
    .map(section)
    .join('')}${items === '' ? '' : `faults:\n${items}`}`;
}

type Edit = (model: Model, who: string) => Model;

const inSection =
  (i: number, edit: (section: Section) => Section): Edit =>
  (model) => ({
    ...model,
    sections: model.sections.map((section) =>
      section.name === begin.sections[i]!.name ? edit(section) : section,
    ),
  });

const place = fc.nat(3);
const edits: fc.Arbitrary<Edit> = fc.oneof(
  fc.tuple(place, place, fc.nat(3)).map(([i, j, n]): Edit =>
    inSection(i, (section) => ({
      ...section,
      entries: section.entries.map((entry) =>
        entry.key === begin.sections[i]!.entries[j]!.key ? { ...entry, value: `9${n} deg left` } : entry,
      ),
    })),
  ),
  fc.tuple(place, place).map(([i, j]): Edit =>
    inSection(i, (section) => ({
      ...section,
      entries: section.entries.filter(({ key }) => key !== begin.sections[i]!.entries[j]!.key),
    })),
  ),
  fc.tuple(place, fc.nat(4), fc.nat(2)).map(
    ([i, at, n]): Edit =>
      (model, who) =>
        inSection(i, (section) => {
          const entry = { key: `new_${who}_${n}`, value: `${n} cm` };
          if (section.entries.some(({ key }) => key === entry.key)) return section;
          return { ...section, entries: section.entries.toSpliced(at, 0, entry) };
        })(model, who),
  ),
  fc.tuple(fc.constantFrom(0, 2), place, fc.nat(2)).map(
    ([i, j, n]): Edit =>
      (model, who) =>
        inSection(i, (section) => ({
          ...section,
          entries: section.entries.map((entry) =>
            entry.key === begin.sections[i]!.entries[j]!.key && section.style === 'block'
              ? { ...entry, comment: `said ${who} ${n}` }
              : entry,
          ),
        }))(model, who),
  ),
  fc
    .constantFrom(1, 3)
    .map((i): Edit =>
      inSection(i, (section) => ({ ...section, style: section.style === 'flow' ? 'block' : 'flow' })),
    ),
  fc.tuple(place, place).map(([i, j]): Edit => (model) => {
    const section = model.sections[i];
    return section === undefined
      ? model
      : { ...model, sections: model.sections.toSpliced(i, 1).toSpliced(j, 0, section) };
  }),
  fc.tuple(fc.nat(2), fc.nat(2)).map(([i, n]): Edit => (model) => ({
    ...model,
    faults: model.faults.map((item) =>
      item.fault === begin.faults[i]!.fault ? { ...item, note: `now ${n}` } : item,
    ),
  })),
  fc.nat(2).map((i): Edit => (model) => ({
    ...model,
    faults: model.faults.filter(({ fault }) => fault !== begin.faults[i]!.fault),
  })),
  fc.tuple(fc.nat(3), fc.nat(2)).map(
    ([at, n]): Edit =>
      (model, who) =>
        model.faults.some(({ fault }) => fault === `new-${who}-${n}`)
          ? model
          : { ...model, faults: model.faults.toSpliced(at, 0, { fault: `new-${who}-${n}`, note: 'fresh' }) },
  ),
);

/** What is said in a record, one line each: `delivery/delivery_a` = value, and its comment. */
function saidIn({ sections, faults }: Model): Map<string, string> {
  return new Map([
    ...sections.flatMap(({ name, entries }) =>
      entries.flatMap(({ key, value, comment }): [string, string][] => [
        [`${name}/${key}`, value],
        ...(comment === undefined ? [] : [[`${name}/${key}#`, comment] as [string, string]]),
      ]),
    ),
    ...faults.map(({ fault, note }): [string, string] => [`faults/${fault}`, note]),
  ]);
}

/** By hand, key by key: what must stand in the merged record, and which keys both sides changed in different ways. */
function byHand(base: Model, ours: Model, theirs: Model) {
  const [b, o, t] = [base, ours, theirs].map(saidIn) as [
    Map<string, string>,
    Map<string, string>,
    Map<string, string>,
  ];
  const said = new Map<string, string>();
  const clashes: string[] = [];
  for (const key of new Set([...b.keys(), ...o.keys(), ...t.keys()])) {
    const [was, own, other] = [b.get(key), o.get(key), t.get(key)];
    const kept = own === other || other === was ? own : own === was ? other : undefined;
    const isClash = own !== other && other !== was && own !== was;
    if (isClash) clashes.push(key);
    else if (kept !== undefined) said.set(key, kept);
  }
  // Who takes out a whole value clashes with who changed anything about it.
  for (const key of b.keys()) {
    const [owner] = key.split('#');
    for (const [one, other] of [
      [o, t],
      [t, o],
    ] as const)
      if (!one.has(owner!) && other.has(owner!) && other.get(key) !== b.get(key)) clashes.push(key);
  }
  for (const key of [...o.keys(), ...t.keys()])
    if (key.endsWith('#') && !b.has(key) && (!o.has(key.slice(0, -1)) || !t.has(key.slice(0, -1))))
      clashes.push(key);
  const sectionsOf = (model: Map<string, string>) =>
    new Set([...model.keys()].map((key) => key.split('/')[0]!));
  const gone = [...sectionsOf(b)].filter((name) => !sectionsOf(o).has(name) || !sectionsOf(t).has(name));
  // Where one side took out all and the other a part, a person has a look.
  for (const name of gone)
    for (const side of [o, t]) {
      const own = [...b].filter(([key]) => key.startsWith(`${name}/`));
      const isThere = sectionsOf(side).has(name);
      const isChanged =
        [...side].some(([key, value]) => key.startsWith(`${name}/`) && b.get(key) !== value) ||
        own.some(([key]) => !side.has(key));
      if (isThere && isChanged) clashes.push(name);
    }
  return { said, clashes };
}

describe('merging random pairs of edits', () => {
  it('does what a person would, and loses nothing', () => {
    let [clean, marked] = [0, 0];
    fc.assert(
      fc.property(fc.array(edits, { maxLength: 5 }), fc.array(edits, { maxLength: 5 }), (own, other) => {
        const ours = own.reduce((model, edit) => edit(model, 'ours'), begin);
        const theirs = other.reduce((model, edit) => edit(model, 'theirs'), begin);
        const { text, conflicts } = merged(textOf(begin), textOf(ours), textOf(theirs));
        const { said, clashes } = byHand(begin, ours, theirs);
        if (clashes.length > 0) {
          marked += 1;
          assert.ok(conflicts > 0, `${clashes.join()} clash:\n${text}`);
          for (const side of [ours, theirs])
            for (const [key, value] of saidIn(side))
              if (saidIn(begin).get(key) !== value)
                assert.ok(text.includes(value), `${key}: ${value} is lost:\n${text}`);
          return;
        }
        clean += 1;
        assert.equal(conflicts, 0, text);
        const found = parse(text) as Record<string, unknown>;
        const values = new Map<string, string>();
        for (const [name, section] of Object.entries(found)) {
          if (name === 'swing') continue;
          if (Array.isArray(section))
            for (const { fault, note } of section as Item[]) values.set(`faults/${fault}`, note);
          else
            for (const [key, value] of Object.entries((section ?? {}) as Record<string, string>))
              values.set(`${name}/${key}`, value);
        }
        const expected = [...said].filter(([key]) => !key.endsWith('#'));
        assert.deepEqual(new Map([...values].sort()), new Map(expected.sort()), text);
        for (const [key, comment] of said)
          if (key.endsWith('#')) assert.ok(text.includes(`# ${comment}`), `${key} ${text}`);
      }),
      { numRuns: 1000 },
    );
    assert.ok(clean > 200 && marked > 40, `${clean} clean, ${marked} marked`);
  });
});

describe('merging values that say the same, and items that moved', () => {
  const fault = (inner: string): string => `swing: 1\nfaults: [{ fault: a, ${inner} }]\n`;

  it('marks a fault that both put to another place', () => {
    const { text, conflicts } = merged(fault('at: top'), fault('at: impact'), fault('at: finish'));
    assert.equal(conflicts, 1);
    assert.match(text, /<<<<<<< ours\n.*at: impact.*\n=======\n.*at: finish.*\n>>>>>>> theirs/);
  });

  it('keeps one fault where one side changed its place and the other added a note', () => {
    const noted = merged(fault('at: top'), fault('at: impact'), fault('at: top, note: late'));
    assert.deepEqual(noted, { text: fault('at: impact, note: late'), conflicts: 0 });
    const other = merged(fault('at: top'), fault('at: top, note: late'), fault('at: impact'));
    assert.deepEqual(other, { text: fault('at: impact, note: late'), conflicts: 0 });
  });

  it('keeps two faults of one name at two places apart', () => {
    const two = 'swing: 1\nfaults:\n  - { fault: a, at: top }\n  - { fault: a, at: impact }\n';
    const changed = two.replace('at: top }', 'at: finish }');
    const noted = two.replace('at: impact }', 'at: impact, note: late }');
    const both = changed.replace('at: impact }', 'at: impact, note: late }');
    assert.deepEqual(merged(two, changed, noted), { text: both, conflicts: 0 });
  });

  const carry = (value: string): string => `swing: 1\nflight: { carry: ${value} }\n`;

  it('takes another unit for no change', () => {
    assert.deepEqual(merged(carry('100 m'), carry('10000 cm'), carry('120 m')), {
      text: carry('120 m'),
      conflicts: 0,
    });
    assert.deepEqual(merged(carry('100 m'), carry('120 m'), carry('10000 cm')), {
      text: carry('120 m'),
      conflicts: 0,
    });
    const apex = (value: string): string => `swing: 1\nflight:\n  carry: 100 m\n${value}`;
    assert.deepEqual(merged(apex(''), apex('  apex: 20 m\n'), apex('  apex: 2000 cm\n')), {
      text: apex('  apex: 20 m\n'),
      conflicts: 0,
    });
    assert.equal(merged(carry('100 m'), carry('10001 cm'), carry('120 m')).conflicts, 1);
  });

  it('lets a key go above which the other side only added an empty line', () => {
    const base = 'swing: 1\nclub: hybrid\nnotes: late\n';
    const spaced = base.replace('notes', '\nnotes');
    const without = 'swing: 1\nclub: hybrid\n';
    assert.deepEqual(merged(base, spaced, without), { text: without, conflicts: 0 });
    assert.deepEqual(merged(base, without, spaced), { text: without, conflicts: 0 });
    assert.equal(merged(base, base.replace('notes', '# why\nnotes'), without).conflicts, 1);
  });
});
