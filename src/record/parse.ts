// The one way from a file's text to its typed document; never throws, and opens no other file.
import type { FileKind, SwingwrightDocument } from './document.ts';

/** Reads a file of this kind. `methods` are methods of measuring that the workspace adds to the registry's. */
export function parseDocument(
  kind: FileKind,
  text: string,
  methods: readonly string[] = [],
): SwingwrightDocument {
  void methods;
  const base = { text, problems: [], silences: [], outline: [] };
  switch (kind) {
    case 'swing':
      return { ...base, kind, student: undefined, date: undefined, club: undefined, template: undefined, faultsFrom: undefined, shotsFile: undefined, entries: new Map(), shots: [], shape: undefined, faults: [], goals: [], plan: [] };
    case 'student':
      return { ...base, kind, name: undefined, hand: undefined, bodyTable: undefined, entries: new Map(), bag: new Map(), goals: [] };
    case 'template':
      return { ...base, kind, title: undefined, clubs: [], windows: new Map() };
    case 'faults':
      return { ...base, kind, faults: new Map(), extends: undefined };
    case 'review':
      return { ...base, kind, of: undefined };
    case 'workspace':
      return { ...base, kind, coverage: 1, severities: new Map(), methods: new Map() };
  }
}
