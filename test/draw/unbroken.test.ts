// No line ends between a number and its unit, on pages, pictures and paper.
import assert from 'node:assert/strict';
import { h } from 'preact';
import { wrapped } from '../../src/draw/lettering.ts';
import { pageOf } from '../../src/draw/page.tsx';
import { unbroken } from '../../src/draw/unbroken.ts';
import { unitRows } from '../../src/measure/unit-table.ts';

const shown = (text: string): string => text.replaceAll('\u00a0', '_');

describe('a number and its unit', () => {
  it('stand on one line, whichever unit it is', () => {
    for (const { name } of unitRows)
      if (name !== '') assert.equal(shown(unbroken(`(12.5 ${name}) and`)), `(12.5_${name}) and`);
    assert.equal(shown(unbroken('49.0 cm ± 0.7 cm, 5 points, 7.1 u')), '49.0_cm ±_0.7_cm, 5_points, 7.1_u');
    assert.equal(shown(unbroken('5 minutes, 3 shots, 2 m/sec, 4 x')), '5 minutes, 3 shots, 2 m/sec, 4 x');
  });

  it('stand on one line of a page, where code stays as it is written in a file', () => {
    const page = pageOf({
      title: '5 cm',
      children: ['so (89 %) of ', h('code', {}, 'lead pressure > 65 %'), ' and 3 m'],
    });
    const [, words = ''] = /<main>(.*)<\/main>/s.exec(page) ?? [];
    assert.equal(shown(words), 'so (89_%) of <code>lead pressure > 65 %</code> and 3_m');
    assert.match(page, /<title>5 cm<\/title>/);
  });

  it('stand on one line of a picture', () => {
    for (let width = 40; width < 160; width += 3)
      for (const line of wrapped('some words of 12.5 cm and then (89 %) of 49.0 cm ± 0.7 cm', width, 11, 20))
        assert.doesNotMatch(line, /^(cm|%\)|0\.7)|\d$|±$/, `${width}`);
  });
});
