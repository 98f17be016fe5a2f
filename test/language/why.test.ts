// The page that says why a quantity is what it is: all parts, as literal Markdown.
import assert from 'node:assert/strict';
import { explainWhy } from '../../src/language/index.ts';
import { analysed } from './analysed.ts';

const text = `swing: 1
delivery:
  face: 1 deg right ± 1 deg
  path: 5 deg right ± 2 deg
  face_to_path: 4 deg left ± 1 deg
  attack: 4 deg down ± 0.5 deg
  arc: { radius: 1.5 m ± 5 cm, inclination: 58 deg ± 2 deg }
`;

describe('the page that says why', () => {
  it('gives value, interval, verdict, steps, shares and what it would be without an entry', () => {
    const page = explainWhy(analysed(text), 'delivery.face_to_path')!;
    assert.match(page, /^# Face to path: (4\.0|3\.9) deg left ± 0\.9 deg\n/);
    assert.match(page, /In 95 of 100 cases the true value lies in [\d.]+ deg/);
    assert.match(
      page,
      /^- 4\.0 deg left ± 1\.0 deg\. Checked, and it fits: the others say 4\.0 deg left ± 2\.2 deg\.$/m,
    );
    assert.match(page, /^1\. face = path \\\+ face\\-to\\-path {2}$/m);
    assert.match(page, /^\| \d+ % \| face to path 4\.0 deg left ± 1\.0 deg, the entry itself \|$/m);
    assert.match(page, /^\| club path \| \d\.\d deg left ± \d\.\d deg \|$/m);
  });

  it('gives a computed value with the steps that it follows by', () => {
    const page = explainWhy(analysed(text), 'delivery.low_point.ahead')!;
    assert.match(page, /^# Low point: 12\.3 cm ahead ± 1\.\d cm\n/);
    assert.match(page, /`delivery\.low_point\.ahead`, computed\./);
    assert.match(page, /Geometry of a circle in an inclined plane/);
    assert.doesNotMatch(page, /## Entered/);
  });

  it('is undefined for what the record says nothing of, and in other files', () => {
    assert.equal(explainWhy(analysed(text), 'flight.carry'), undefined);
    assert.equal(explainWhy(analysed(text), 'no.such.quantity'), undefined);
    assert.equal(
      explainWhy(analysed('student: 1\n', { name: 'm.student.yaml' }), 'student.stature'),
      undefined,
    );
  });
});
