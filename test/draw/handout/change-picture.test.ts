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
delivery: { face: ${face} deg right ± 0.5 deg, path: 0 deg }
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

describe('the way of the head on a handout', () => {
  /** Degrees by which each way rises toward the target where it meets the ball, and how far it goes below the ground, in units. */
  const waysOf = (attack: string, to: string, hand: string) => {
    const handout = handoutOfFiles({
      'lesson.swing.yaml': `swing: 1
student: a.student.yaml
delivery: { attack: ${attack} }
plan: [{ change: delivery.attack, to: ${to} }]
`,
      'a.student.yaml': `student: 1\nhand: ${hand}\n`,
    });
    const svg = svgOf(contentOf(handout, 'student').cards[0]!.picture!(themes.light));
    assert.match(svg, />angles drawn 2\.5 times as large</);
    const ball = [...svg.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)" r="8"/g)];
    return [...svg.matchAll(/<path [^>]*data-part="way"[^>]*>/g)].map(([way], i) => {
      const [x, ground] = [Number(ball[i]![1]), Number(ball[i]![2]) + 9];
      const [before, after] = [-1, 1].map((by) => places(way).find((place) => place.x === x + by)!);
      const toTarget = hand === 'left' ? -1 : 1;
      const rise = (before!.y - after!.y) / (after!.x - before!.x);
      return {
        slope: (Math.atan(toTarget * rise) * 180) / Math.PI,
        below: Math.max(...places(way).map(({ y }) => y)) - ground,
      };
    });
  };

  it('rises and falls at the ball as the attack does, 2.5 times as steeply', () => {
    for (const hand of ['right', 'left']) {
      const [now, aim] = waysOf('3 deg down', '6 deg down', hand);
      assert.ok(
        Math.abs(now!.slope + 7.5) < 0.5 && Math.abs(aim!.slope + 15) < 0.5,
        JSON.stringify([now, aim]),
      );
      assert.ok(aim!.below > 0);
    }
  });

  it('does not dig where the club comes up into the ball', () => {
    const [now, aim] = waysOf('2.2 deg up', '4 deg up', 'right');
    assert.ok(
      Math.abs(now!.slope - 5.5) < 0.5 && Math.abs(aim!.slope - 10) < 0.5,
      JSON.stringify([now, aim]),
    );
    assert.ok(now!.below <= 0 && aim!.below <= 0);
  });
});

describe('a small picture on a handout', () => {
  const marksOf = (change: string, hand: string, language = 'en'): readonly string[] => {
    const handout = handoutOfFiles(
      {
        'lesson.swing.yaml': `swing: 1
student: a.student.yaml
checkpoints: { address: { stance_width: 47 cm }, impact: { shaft_lean: 4 deg forward, pelvis_depth: 9 cm inside } }
delivery: { path: 2 deg right, low_point: { ahead: 2 cm ahead } }
${change === '' ? '' : `plan: [{ change: ${change} }]\n`}`,
        'a.student.yaml': `student: 1\nhand: ${hand}\n`,
      },
      { language },
    );
    const { cards, measured } = contentOf(handout, 'student');
    const svg = svgOf((cards[0]?.picture ?? measured!.picture!)(themes.light));
    return [...svg.matchAll(/data-part="target" data-way="(\w+)".*?<text[^>]*>([^<]*)</g)].map(
      ([, way, word]) => `${way} ${word}`,
    );
  };

  it('says where the target is, for either hand and in the language of the page', () => {
    for (const change of [
      'checkpoints.address.stance_width, to: 41 cm',
      'checkpoints.impact.shaft_lean, to: 8 deg forward',
      'delivery.low_point.ahead, to: 6 cm ahead',
    ]) {
      assert.deepEqual(marksOf(change, 'right'), ['right target', 'right target'], change);
      assert.deepEqual(marksOf(change, 'left', 'de'), ['left Ziel', 'left Ziel'], change);
    }
    for (const change of ['delivery.path, to: 0 deg', 'checkpoints.impact.pelvis_depth, to: 12 cm inside'])
      assert.deepEqual(marksOf(change, 'left'), ['up target', 'up target'], change);
    assert.deepEqual(marksOf('', 'left'), ['left target', 'up target', 'left target']);
  });

  it('has its numbers whole, in smaller letters where they are long', () => {
    const handout = handoutOfFiles(
      {
        'lesson.swing.yaml':
          'swing: 1\ndelivery: { low_point: { ahead: 3 cm ahead } }\nplan: [{ change: delivery.low_point.ahead, to: 12 cm ahead }]\n',
      },
      { language: 'de' },
    );
    const svg = svgOf(contentOf(handout, 'student').cards[0]!.picture!(themes.light));
    assert.match(svg, />jetzt 3 cm zum Ziel hin</);
    assert.match(svg, />Soll 12 cm zum Ziel hin</);
  });

  it('has its numbers on a line of their own where they and their words are too long for one', () => {
    const handout = handoutOfFiles(
      {
        'lesson.swing.yaml':
          'swing: 1\nplan: [{ change: checkpoints.address.ball_position, to: 9..12 cm behind }]\n',
      },
      { language: 'de' },
    );
    const svg = svgOf(contentOf(handout, 'student').cards[0]!.picture!(themes.light));
    const words = [...svg.matchAll(/<text[^>]*>([^<]*)</g)].map(([, said]) => said).slice(-4);
    assert.deepEqual(words, ['jetzt', 'nicht bekannt', 'Soll', '9 bis 12 cm vom Ziel weg']);
  });
});
