// The work timer is a start moment and a phase, nothing that runs: a closed tab or an empty battery can't stop it.
import { forget, keep, kept } from './store.js';

export const currentTimer = () => kept('timer');

/** Starts; when this returns the start is on the phone's disk. */
export const startTimer = (project, phase) =>
  keep('timer', { project, phase, started: Date.now() });

/** Ends the timer without a row; the caller has kept one, or wants none. */
export const clearTimer = () => forget('timer');
