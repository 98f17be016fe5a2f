// `npm run bench`: speeds as ratios within one run; needs SciPy for the second one and says so where it is absent.
import { run, setUp } from './setup.mjs';

setUp();
run(process.execPath, ['--import=tsx', 'build/bench/keystroke.ts']);
run(process.execPath, ['--import=tsx', 'build/bench/trajectory.ts']);
