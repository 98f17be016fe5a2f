// A file of shots is read whatever program wrote it, and what cannot be read is pointed at, to the character.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { noColumns } from '../../src/record/shot-columns.ts';
import { mostRows, readShotsFile, type ShotsFile } from '../../src/record/shots-file.ts';
import { parseDocument } from '../../src/record/parse.ts';
import { builtIn } from '../../src/registry/registry.ts';

function read(text: string, workspace = ''): ShotsFile {
  const document = parseDocument('workspace', `swingwright: 1\n${workspace}`);
  assert.deepEqual(
    document.problems.map(({ found }) => found),
    [],
  );
  const columns = document.kind === 'workspace' ? document.shotColumns : noColumns;
  return readShotsFile(text, columns, builtIn);
}

function valuesOf({ shots }: ShotsFile, id: string): (number | undefined)[] {
  return shots.map(({ measures }) => measures.get(id)?.value);
}

function faultsOf({ text, columnProblems, rowProblems }: ShotsFile): string[] {
  return [...columnProblems, ...rowProblems].map(
    ({ span, found }) => `${text.slice(span.start, span.end)}: ${found}`,
  );
}

const degree = Math.PI / 180;

describe('a file of shots', () => {
  it('takes ids, short keys and words with spaces as columns', () => {
    const file = read('flight.carry,low_point.ahead,Ball Speed\n168,3,61\n');
    assert.deepEqual(faultsOf(file), []);
    assert.deepEqual(
      [...file.shots[0]!.measures].map(([id, { value }]) => [id, value]),
      [
        ['flight.carry', 168],
        ['delivery.low_point.ahead', 0.03],
        ['flight.ball_speed', 61],
      ],
    );
  });

  it('takes the unit of bare numbers from square or round brackets', () => {
    // 1 yd is 0.9144 m by the international agreement of 1959.
    assert.deepEqual(valuesOf(read('carry [yd]\n100\n'), 'flight.carry'), [91.44]);
    assert.deepEqual(valuesOf(read('carry (yd)\n100\n'), 'flight.carry'), [91.44]);
    assert.deepEqual(valuesOf(read('carry (yd)\n100 m\n'), 'flight.carry'), [100]);
  });

  it('takes names, units, methods and what to ignore from the workspace file', () => {
    const workspace = `shots:
  by: radar
  columns:
    Flown: { quantity: flight.carry, unit: yd, by: rangefinder }
    start dir: start
    Mood: ignore
`;
    const file = read('FLOWN,Start Dir,Mood\n100,2 left,fine\n', workspace);
    assert.deepEqual(faultsOf(file), []);
    assert.deepEqual(valuesOf(file, 'flight.carry'), [91.44]);
    const [shot] = file.shots;
    assert.deepEqual(
      [...shot!.measures.values()].map(({ method }) => method),
      ['rangefinder', 'radar'],
    );
  });

  it('takes direction words and signs, right positive', () => {
    const [first, second, third] = valuesOf(read('start\n2 right\n-2\n2 deg left\n'), 'flight.start');
    assert.ok(Math.abs(first! - 2 * degree) < 1e-15);
    assert.equal(second, -first!);
    assert.equal(third, -first!);
  });

  it('takes a byte order mark, Windows line breaks, quotes and empty lines', () => {
    const file = read('\ufeff"carry","start"\r\n\r\n"168","1 right"\r\n170,2 left\r\n');
    assert.deepEqual(faultsOf(file), []);
    assert.deepEqual(valuesOf(file, 'flight.carry'), [168, 170]);
    assert.deepEqual(
      file.shots.map(({ row }) => row),
      [1, 2],
    );
  });

  it('takes decimal commas where semicolons or tabs part the cells', () => {
    assert.deepEqual(valuesOf(read('carry;start\n168,5;1,5 right\n'), 'flight.carry'), [168.5]);
    assert.deepEqual(valuesOf(read('carry\tstart\n168,5\t1,5\n'), 'flight.carry'), [168.5]);
  });

  it('refuses decimal commas where commas part the cells', () => {
    assert.deepEqual(faultsOf(read('carry,start\n168,5,1\n')), [
      '1: 3 cells (a decimal comma parts a cell in two)',
    ]);
    assert.deepEqual(faultsOf(read('carry,start\n"168,5",1\n')), [
      '168,5: `168,5`, a number with a comma for `flight.carry`',
    ]);
  });

  it('takes an empty cell, a dash and n/a as no value, and the rest of the row as it is', () => {
    const file = read('carry,start,curve\n,1,-\n168,n/a,2\n');
    assert.deepEqual(faultsOf(file), []);
    assert.deepEqual(valuesOf(file, 'flight.carry'), [undefined, 168]);
    assert.equal(file.shots[0]!.measures.size, 1);
  });

  it('points at the very cell that cannot be read, and uses the other rows', () => {
    const file = read('carry,start\n168,1\n  170 , 3 kg \n"171","2 lft"\n172,2\n');
    assert.deepEqual(faultsOf(file), [
      'kg: `kg`, a unit of mass for `flight.start`',
      'lft: `lft` for `flight.start`',
    ]);
    assert.deepEqual(valuesOf(file, 'flight.carry'), [168, 172]);
    assert.equal(file.unreadRows, 2);
  });

  it('refuses a row with a value that cannot be', () => {
    assert.deepEqual(faultsOf(read('carry\n9000\n')), ['9000: `9000` for `flight.carry`']);
  });

  it('says which column is not known, which name is nearest, and which comes twice', () => {
    const file = read('cary,carry [kg],carry,flight.carry,\n1,2,3,4,5\n');
    assert.deepEqual(
      file.columnProblems.map(({ found, nearest }) => [found, nearest]),
      [
        ['`cary`', 'carry'],
        ['`carry [kg]`, with the unit `kg`', undefined],
        ['`flight.carry`, a second column of `flight.carry`', undefined],
      ],
    );
  });

  it(`reads at most ${mostRows} rows and says so`, () => {
    const file = read(`carry\n${'168\n'.repeat(mostRows + 50)}`);
    assert.equal(file.shots.length, mostRows);
    assert.match(file.rowProblems[0]!.found, /all below it/);
  });

  it('says that a file is empty', () => {
    assert.deepEqual(faultsOf(read('')), [': no first line']);
  });

  it('reads any text without an error, with every place inside it', () => {
    const piece = fc.constantFrom(
      'carry',
      'start',
      ',',
      ';',
      '\t',
      '"',
      '\n',
      '\r\n',
      '1',
      '2,5',
      ' left',
      'x',
      '\ufeff',
      '±',
    );
    fc.assert(
      fc.property(
        fc.array(fc.oneof(piece, fc.string({ unit: 'binary', maxLength: 3 })), { maxLength: 40 }),
        (parts) => {
          const text = parts.join('');
          const { shots, columnProblems, rowProblems } = readShotsFile(text, noColumns, builtIn);
          for (const { span } of [...columnProblems, ...rowProblems, ...shots])
            assert.ok(0 <= span.start && span.start <= span.end && span.end <= text.length);
          for (const { measures } of shots)
            for (const { value } of measures.values()) assert.ok(Number.isFinite(value));
        },
      ),
    );
  });
});
