import assert from 'node:assert/strict';
import fc from 'fast-check';
import type { Entry, SwingRecord } from '../../src/record/document.ts';
import { lineEnd, lineOf, lineStartsOf } from '../../src/record/lines.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { lesson } from './lesson.ts';

const starts = lineStartsOf(lesson);
const whole = parseDocument('swing', lesson) as SwingRecord;

/** What was measured, without its place. */
function readingsOf(entry: Entry | undefined): unknown {
  return entry?.readings.map(({ measure, note, doubtful, seen, form }) => {
    return { ...measure, spans: undefined, note, doubtful, seen, form };
  });
}

/** The lines whose indentation puts them below this one. */
function isBelow(line: number, header: number): boolean {
  const indent = (n: number) => lesson.slice(starts[n]).search(/[^ ]/);
  if (line <= header) return false;
  for (let n = header + 1; n <= line; n++) {
    const says = lesson.slice(starts[n], lineEnd(lesson, starts[n]!)).trim() !== '';
    if (says && indent(n) <= indent(header)) return false;
  }
  return true;
}

describe('a lesson that is being typed', () => {
  it('has no problem when it is done', () => {
    assert.deepEqual(whole.problems, []);
    assert.equal(whole.entries.size, 25);
  });

  it('keeps what stands on whole lines, wherever it ends', () => {
    for (let end = 0; end <= lesson.length; end++) {
      const part = parseDocument('swing', lesson.slice(0, end)) as SwingRecord;
      const lastLine = starts[lineOf(starts, end)]!;
      for (const [id, entry] of whole.entries) {
        if (entry.valueSpan.end >= lastLine) continue;
        assert.deepEqual(part.entries.get(id)?.readings, entry.readings, `${id}, cut at ${end}`);
      }
    }
  });

  it('keeps the other lines while one in its middle is half-typed', () => {
    const cut = fc.nat(lesson.length - 1).filter((at) => {
      const start = starts[lineOf(starts, at)]!;
      return lesson.slice(start, at).trim() !== '' && at < lineEnd(lesson, start);
    });
    fc.assert(
      fc.property(cut, (at) => {
        const line = lineOf(starts, at);
        const text = lesson.slice(0, at) + lesson.slice(lineEnd(lesson, starts[line]!));
        const part = parseDocument('swing', text) as SwingRecord;
        for (const [id, entry] of whole.entries) {
          const first = lineOf(starts, entry.keySpan.start);
          const last = lineOf(starts, entry.valueSpan.end);
          if (first <= line && line <= last) continue;
          // One letter may begin several sections.
          if (isBelow(first, line)) continue;
          assert.deepEqual(
            readingsOf(part.entries.get(id)),
            readingsOf(entry),
            `${id}, line ${line} cut at ${at}`,
          );
        }
      }),
      { numRuns: 400 },
    );
  });

  it('keeps what stands below a section whose name is half-typed, as soon as it can be no other', () => {
    for (const [header, id] of [
      ['checkpoints:', 'checkpoints.address.stance_width'],
      ['  impact:', 'checkpoints.impact.shaft_lean'],
      ['delivery:', 'delivery.attack'],
      ['  low_point:', 'delivery.low_point.ahead'],
      ['ground:', 'ground.divot.length'],
      ['flight:', 'flight.curve'],
    ] as const) {
      for (let length = header.trimStart().length - 1; length >= 3; length--) {
        const typed = header.slice(0, header.length - header.trimStart().length + length);
        const part = parseDocument('swing', lesson.replace(`\n${header}\n`, `\n${typed}\n`)) as SwingRecord;
        assert.deepEqual(readingsOf(part.entries.get(id)), readingsOf(whole.entries.get(id)), typed);
        assert.deepEqual(
          part.problems.map(({ code }) => code),
          ['yaml-syntax'],
          typed,
        );
      }
    }
  });

  it('takes a half-typed section for the first that begins so and is not there yet', () => {
    const text = lesson.replace('\n  lead_arm_parallel_down:\n', '\n  lead_arm_parallel\n');
    const part = parseDocument('swing', text) as SwingRecord;
    assert.ok(part.entries.has('checkpoints.lead_arm_parallel_back.sternum'));
    assert.ok(part.entries.has('checkpoints.impact.shaft_lean'));
  });

  it('keeps every other shot of a list in brackets while one is half-typed', () => {
    const line = '  { carry: 171 m, start: 1 deg right },';
    for (let length = 3; length < line.length - 2; length++) {
      const part = parseDocument('swing', lesson.replace(line, line.slice(0, length))) as SwingRecord;
      const last = part.shots.at(-1);
      assert.deepEqual(
        readingsOf(last?.get('flight.carry')),
        readingsOf(whole.shots[1]?.get('flight.carry')),
        line.slice(0, length),
      );
      assert.ok(part.faults.length === 2 && part.plan.length === 1, line.slice(0, length));
    }
  });

  it('has one problem, on the line whose colon is still to come', () => {
    const halves = [...whole.entries.values()].map(({ keySpan }) => keySpan.end);
    for (const end of halves) {
      const start = starts[lineOf(starts, end)]!;
      // Inside brackets and lists a line holds more than one entry.
      if (/[{[]/.test(lesson.slice(start, lineEnd(lesson, start)))) continue;
      const text = lesson.slice(0, end) + lesson.slice(lineEnd(lesson, start));
      const { problems } = parseDocument('swing', text);
      const isFirst = lesson.slice(0, start).trimEnd().endsWith(':');
      const indent = lesson.slice(start).search(/\S/);
      const isLast = lesson.slice(lineEnd(lesson, start)).search(/[^\s]/) <= indent;
      // Alone in its section the word is the section's value.
      const code = isFirst && isLast ? 'wrong-shape' : 'yaml-syntax';
      assert.deepEqual(
        problems.map((problem) => problem.code),
        [code],
        lesson.slice(start, end),
      );
    }
  });

  it('has one problem, on a word that was begun above a comment', () => {
    for (const [n, start] of starts.entries()) {
      const line = lesson.slice(start, lineEnd(lesson, start));
      // Inside brackets and lists a line is no key of its own.
      if (!/^ *\w+:/.test(line)) continue;
      const indent = ' '.repeat(line.search(/\S/));
      const text = `${lesson.slice(0, start)}${indent}lang\n${indent}# a remark\n\n${lesson.slice(start)}`;
      const part = parseDocument('swing', text) as SwingRecord;
      assert.deepEqual(
        part.problems.map(({ code, span }) => [code, text.slice(span.start, span.end)]),
        [['yaml-syntax', 'lang']],
        `above line ${n + 1}`,
      );
      assert.equal(part.entries.size, whole.entries.size, `above line ${n + 1}`);
    }
  });

  it('has one problem, on a bracket that was opened above other keys', () => {
    for (const typed of ['[', '{', '[2 deg right,', '[2 deg right', '{ value: 2', '{ value: 2 deg, ', '[[']) {
      const text = `swing: 1\ndelivery:\n  club_speed: 36 m/s\n  path: ${typed}\n  attack: 4 deg down\n  face: 1 deg right\nflight:\n  carry: 140 m\n`;
      const part = parseDocument('swing', text) as SwingRecord;
      assert.deepEqual(
        part.problems.filter(({ code }) => code === 'yaml-syntax').map(({ found }) => found),
        [`\`${typed[0]}\` without \`${typed.startsWith('{') ? '}' : ']'}\``],
        typed,
      );
      for (const id of ['delivery.club_speed', 'delivery.attack', 'delivery.face', 'flight.carry'])
        assert.ok((part.entries.get(id)?.readings.length ?? 0) > 0, `${id} below ${typed}`);
    }
  });
});
