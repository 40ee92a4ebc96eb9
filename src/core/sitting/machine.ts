/** The sitting machine: begin or resume, step by step, seal. */
export { replaySat, resumeSitting } from './resume-sitting';
export { keptAway, keptVisit, sealSitting } from './seal-sitting';
export type { Happening, SittingEvent } from './sitting-event';
export { beginSitting, type SittingState } from './sitting-state';
export { guardMs, stepSitting } from './step-sitting';
