// The check that holds face-to-path against the face direction and the club path.
import { conflictCheck } from './conflict-check.ts';
import { explain } from './explain.ts';

export const faceToPathAgainstFace = conflictCheck({
  code: 'face-to-path-against-face',
  severity: 'warning',
  title: 'Face to path does not fit face and path',
  explanation: explain({
    found: 'Face to path is not the face direction less the club path.',
    matters:
      'All three stand in the record and one of them must be off; left and right are easily changed for each other.',
    raises: `delivery:
  face: 1 deg right by radar
  path: 5 deg right by radar
  face_to_path: 4 deg right by radar`,
    accepts: `delivery:
  face: 1 deg right by radar
  path: 5 deg right by radar
  face_to_path: 4 deg left by radar`,
    source: 'by definition: face to path = face − path, positive to the right.',
  }),
});
