// The settings that the server reads, and what holds where the editor says nothing; package.json tells the same defaults.
import type { HintSwitches } from '../language/index.ts';

export const hintsSection = 'swingwright.hints';

export const defaultHints: HintSwitches = {
  units: true,
  faceToPath: true,
  lowPoint: true,
  flight: true,
  shots: true,
  windows: true,
  faults: true,
};

export const hoversSection = 'swingwright.hovers';

export interface HoverSettings {
  /** Whether hovers hold pictures, in editors that show them. */
  readonly pictures: boolean;
}

export const defaultHovers: HoverSettings = { pictures: true };

/** Whatever an editor sends: anything but a switch is taken as not said. */
export function readHints(sent: unknown): HintSwitches {
  const or = (name: keyof HintSwitches): boolean => switchIn(sent, name) ?? defaultHints[name];
  return {
    units: or('units'),
    faceToPath: or('faceToPath'),
    lowPoint: or('lowPoint'),
    flight: or('flight'),
    shots: or('shots'),
    windows: or('windows'),
    faults: or('faults'),
  };
}

export function readHovers(sent: unknown): HoverSettings {
  return { pictures: switchIn(sent, 'pictures') ?? defaultHovers.pictures };
}

function switchIn(sent: unknown, name: string): boolean | undefined {
  const said = typeof sent === 'object' && sent !== null ? (sent as Record<string, unknown>) : {};
  const value = said[name];
  return typeof value === 'boolean' ? value : undefined;
}
