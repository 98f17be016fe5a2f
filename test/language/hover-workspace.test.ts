// The hover on the workspace file says what its calibration and its columns mean.
import assert from 'node:assert/strict';
import { findHover } from '../../src/language/index.ts';
import { marked } from '../marked.ts';
import { analysed } from './analysed.ts';

function hoverIn(source: string): string {
  const { text, position } = marked(source);
  return findHover(analysed(text, { name: 'swingwright.yaml' }), position)?.contents.value ?? '';
}

describe('the hover on the workspace file', () => {
  it('tells of the calibration, its shots and where it holds', () => {
    const hover = hoverIn(
      'swingwright: 1\ncali$0bration: { drag: 1.04 ± 0.02, lift: 0.97 ± 0.03, shots: 48, ball_speed: 38..52 m/s }\n',
    );
    assert.match(hover, /Drag: published coefficients × 1\.040 ± 0\.020\./);
    assert.match(hover, /Lift: .* × 0\.970 ± 0\.030\./);
    assert.match(hover, /Fitted to 48 shots\./);
    assert.match(hover, /ball speeds of 38 to 52 m\/s/);
  });

  it('tells what a quantity is, where it is described and where it is named', () => {
    const own = (is: string, key = 'delivery.rock'): string =>
      `swingwright: 1\nquantities: { delivery.wobble: { title: Wobble, unit: deg, bounds: 0..9 deg, uncertainty: 1 deg } }\nderived: { ${key}: { is: ${is}, like: delivery.wobble, title: Rock } }\n`;
    assert.match(
      hoverIn(own('2 * delivery.wob$0ble')),
      /^\*\*Wobble\*\* {2}\n`delivery\.wobble`[^]*Possible: 0\.\.9 deg/,
    );
    assert.match(
      hoverIn(own('2 * delivery.wobble', 'delivery.ro$0ck')),
      /^\*\*Rock\*\*[^]*Computed as `2 \* delivery\.wobble`\./,
    );
    assert.match(hoverIn(own('delivery.pa$0th')), /`delivery\.path`/);
  });

  it('says that a calibration without drag is not used', () => {
    assert.match(hoverIn('swingwright: 1\ncali$0bration: { lift: 0.97 ± 0.03 }\n'), /Not used/);
  });

  it('lists the columns of files of shots, user text in backticks', () => {
    const hover = hoverIn(
      'swingwright: 1\nsh$0ots: { by: radar, columns: { "A [x](y)": carry, B: ignore } }\n',
    );
    assert.match(hover, /`A \[x\]\(y\)` is `flight\.carry`\./);
    assert.match(hover, /Not read: `B`\./);
  });
});
