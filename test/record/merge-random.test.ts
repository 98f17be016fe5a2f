// Random pairs of edits of one record are merged as a person would merge them, and nothing is lost.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { parse } from 'yaml';
import { merged } from './merged.ts';

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
