// The shape of what a plan leads to: each change alone, all together, and the goals now and then; computes nothing.
import type { PlannedChange } from '../record/document.ts';
import type { FaceNeed } from './face-need.ts';
import type { Made } from './foreseer.ts';
import type { Standing } from './goal-standing.ts';
import type { Prediction } from './prediction.ts';
import type { SpeedNeed } from './speed-need.ts';

export interface ForeseenChange {
  readonly planned: PlannedChange;
  readonly made: Made;
  /** Of this change alone; computed when first asked for. */
  readonly prediction: Prediction;
}

export interface GoalForecast {
  readonly uri: string;
  readonly now: Standing;
  /** After the plan; the same where there is none. */
  readonly then: Standing;
  /** Of what the plan does not reach. */
  readonly need: Need | undefined;
}

export type Need = SpeedNeed | FaceNeed;

export interface Forecast {
  readonly changes: readonly ForeseenChange[];
  readonly whole: Prediction;
  readonly goals: readonly GoalForecast[];
}
