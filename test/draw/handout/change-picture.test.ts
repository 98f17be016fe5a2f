// Path and face on a handout: enlarged angles say that they are, large ones are drawn true.
import assert from 'node:assert/strict';
import { contentOf } from '../../../src/draw/handout/content.tsx';
import { svgOf } from '../../../src/draw/picture.tsx';
import { themes } from '../../../src/draw/theme.ts';
import { handoutOfFiles } from '../../analysis/handouts.ts';
import { places } from '../drawn.ts';

function pictureOf(face: number, to: number, language = 'en'): string {
  const handout = handoutOfFiles(
    {
      'lesson.swing.yaml': `swing: 1
student: a.student.yaml
delivery: { face: ${face} deg right, path: 0 deg }
plan: [{ change: delivery.face, to: ${to} deg right }]
`,
      'a.student.yaml': 'student: 1\nhand: right\n',
    },
    { language },
  );
  return svgOf(contentOf(handout, 'student').cards[0]!.picture!(themes.light));
}

/** Degrees by which each face is turned on the picture. */
function turnsOf(svg: string): readonly number[] {
  return [...svg.matchAll(/<path [^>]*data-part="face"[^>]*>/g)].map(([face]) => {
    const [from, to] = places(face);
    return (Math.atan2(to!.y - from!.y, to!.x - from!.x) * 180) / Math.PI;
  });
}

describe('path and face on a handout', () => {
  it('are drawn 2.5 times as large where angles are small, and say so', () => {
    const svg = pictureOf(8, 2);
    assert.match(svg, />angles drawn 2\.5 times as large</);
    assert.match(svg, /<desc[^>]*>[^<]*angles drawn 2\.5 times as large\.<\/desc>/);
    const [now, aim] = turnsOf(svg);
    assert.ok(Math.abs(now! - 20) < 0.5 && Math.abs(aim! - 5) < 0.5, `${now} ${aim}`);
    assert.match(pictureOf(8, 2, 'de'), />Winkel 2,5-mal so groß gezeichnet</);
  });

  it('are drawn true on both sides where one angle is large', () => {
    const svg = pictureOf(28, 2);
    assert.doesNotMatch(svg, /times as large/);
    const [now, aim] = turnsOf(svg);
    assert.ok(Math.abs(now! - 28) < 0.5 && Math.abs(aim! - 2) < 0.5, `${now} ${aim}`);
  });
});
