// All that an editor can ask of an analysis, in one place: plain data in, plain data out, one file a feature.
export { explain, listCodes } from './explanation.ts';
export { findActions, type ActionRequest } from './actions.ts';
export { findDiagnostics } from './diagnostics.ts';
export { findHints, type HintSwitches } from './hints.ts';
export { findHover, wantsLessons } from './hover.ts';
export { findLinks } from './links.ts';
export { findSymbols } from './symbols.ts';
export { explainWhy } from './why.ts';
