// Tests of the check face-to-path-against-face.
import assert from 'node:assert/strict';
import { assertFixedTo, assertMarked, assertNone, messageOf, uriOf } from './files.ts';

describe('face-to-path-against-face', () => {
  it('marks a face to path on the wrong side', () => {
    assertMarked(
      'face-to-path-against-face',
      `swing: 1
delivery:
  face: 1 deg right by radar
  path: 5 deg right by radar
  face_to_path: 4 deg right by radar
#               ^^^^^^^^^^^^^^^^^^^^ warning[face-to-path-against-face]`,
    );
  });

  it('takes face less path', () => {
    assertNone(
      'face-to-path-against-face',
      `swing: 1
delivery:
  face: 1 deg right by radar
  path: 5 deg right by radar
  face_to_path: 4 deg left by radar`,
    );
  });

  it('says what the others make of it, and points to them', () => {
    const analysis = assertMarked(
      'face-to-path-against-face',
      `swing: 1
delivery:
  face: 1 deg right ± 0.5 deg
  path: 5 deg right ± 0.5 deg
  face_to_path: 4 deg right ± 0.5 deg
#               ^^^^^^^^^^^^^^^^^^^^^ warning[face-to-path-against-face]`,
    );
    assert.equal(
      messageOf(analysis, 'face-to-path-against-face'),
      'Face to path 4.0 deg right does not fit: face direction and club path together say 4.0 deg left ± 0.7 deg, or one of club path and face direction is off: they cannot all be true.',
    );
    const { related } = analysis.findings.find(({ code }) => code === 'face-to-path-against-face')!;
    assert.deepEqual(
      related.map(({ uri, range }) => [uri, range.start]),
      [
        [uriOf('lesson.swing.yaml'), { line: 3, character: 8 }],
        [uriOf('lesson.swing.yaml'), { line: 2, character: 8 }],
      ],
    );
  });

  it('offers to mark the entry doubtful where that widens it enough', () => {
    assertFixedTo(
      'face-to-path-against-face',
      'swing: 1\ndelivery: { face: 1 deg right ± 1 deg, path: 5 deg right ± 1 deg, face_to_path: 4 deg right ± 1.5 deg }',
      'swing: 1\ndelivery: { face: 1 deg right ± 1 deg, path: 5 deg right ± 1 deg, face_to_path: { value: 4 deg right ± 1.5 deg, doubtful: true } }',
    );
  });
});
