// The colours of pictures by what they mean; knows no picture.

/** What a colour stands for. No meaning is told by colour alone: lines, hatching and labels say it too. */
export interface Theme {
  readonly ink: string;
  readonly paper: string;
  /** Words and lines of second rank. */
  readonly soft: string;
  /** Ground, rules, what is only there to be measured from. */
  readonly faint: string;
  /** What was written down. */
  readonly entered: string;
  /** What was computed or is expected. */
  readonly expected: string;
  /** Windows that are taught toward. */
  readonly taught: string;
  /** What a goal asks for. */
  readonly goal: string;
  /** What does not fit. */
  readonly alert: string;
}

export type ThemeName = 'light' | 'dark' | 'contrast-dark' | 'contrast-light';

export const themes: Readonly<Record<ThemeName, Theme>> = {
  light: {
    ink: '#1f2a28',
    paper: '#ffffff',
    soft: '#56635f',
    faint: '#c5cecb',
    entered: '#0a6660',
    expected: '#9a4a14',
    taught: '#8a7420',
    goal: '#5546a8',
    alert: '#b3261e',
  },
  dark: {
    ink: '#e4ebe9',
    paper: '#1e2423',
    soft: '#a3b2ae',
    faint: '#48544f',
    entered: '#5ec9c0',
    expected: '#eba765',
    taught: '#d3bf6a',
    goal: '#b3a8f5',
    alert: '#f49189',
  },
  'contrast-dark': {
    ink: '#ffffff',
    paper: '#000000',
    soft: '#ffffff',
    faint: '#8c8c8c',
    entered: '#4df0e2',
    expected: '#ffb866',
    taught: '#ffe45c',
    goal: '#cdc2ff',
    alert: '#ff9d94',
  },
  'contrast-light': {
    ink: '#000000',
    paper: '#ffffff',
    soft: '#000000',
    faint: '#6e6e6e',
    entered: '#00403c',
    expected: '#6b2f06',
    taught: '#4f4100',
    goal: '#2c1f7a',
    alert: '#7d0d07',
  },
};

/** Colours as CSS variables, for pictures in a page that says what each of them is: see `variablesOf`. */
export const cssTheme = Object.fromEntries(
  Object.keys(themes.light).map((meaning) => [meaning, `var(--sw-${meaning})`]),
) as Readonly<Record<keyof Theme, string>>;

/** What stands between the braces of a CSS rule to give a page the colours of a theme: "--sw-ink: #1f2a28; …". */
export function variablesOf(name: ThemeName): string {
  return Object.entries(themes[name])
    .map(([meaning, colour]) => `--sw-${meaning}: ${colour};`)
    .join(' ');
}
