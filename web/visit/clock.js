// The run-in clock: minutes since the compressor started. It survives a locked screen and a reload.

import { byId, element, fill } from '../shared/dom.js';
import { draft, dropDraft, keepDraft } from '../shared/reader.js';

/** Minutes after which a residential test counts as settled; common practice of the trade. */
const SETTLED = 15;
const SECOND = 1000;

/** A clock that was left running for longer belongs to an earlier visit. */
const LONGEST_MINUTES = 6 * 60;

let key;
let fillBox = () => {};
/** The start while this page is open, where the device cannot keep it. */
let startedHere;

const started = () => draft(key) ?? startedHere;
const twoDigits = number => String(number).padStart(2, '0');

/** Whole minutes since the start; undefined when the clock was never started. */
export function minutesRun() {
  return started() ? Math.floor((Date.now() - started()) / 60_000) : undefined;
}

function show() {
  const since = started();
  byId('restart').hidden = !since;
  byId('start').hidden = Boolean(since);
  if (!since) {
    fill(byId('clock'), element('small', {}, `Start it with the compressor; read after ${SETTLED} minutes.`));
    return;
  }
  const seconds = Math.floor((Date.now() - since) / SECOND);
  const settledAt = new Date(since + SETTLED * 60_000).toLocaleTimeString(undefined, { hour: 'numeric', minute: '2-digit' });
  fill(byId('clock'), `${Math.floor(seconds / 60)}:${twoDigits(seconds % 60)}`,
    element('small', {}, seconds < SETTLED * 60 ? `settled at ${settledAt}` : `settled since ${settledAt}`),
    draft(key) ? '' : element('small', {}, 'This device cannot keep the clock: leave this page open.'));
  fillBox(minutesRun());
}

function begin() {
  startedHere = Date.now();
  keepDraft(key, startedHere);
  show();
}

/** @param onMinutes called with the whole minutes, again and again while the clock runs */
export function layClock(unitId, onMinutes) {
  key = `clock.${unitId}`;
  fillBox = onMinutes;
  if (minutesRun() > LONGEST_MINUTES) stopClock();
  byId('start').addEventListener('click', begin);
  byId('restart').addEventListener('click', begin);
  show();
  setInterval(show, SECOND);
}

export function stopClock() {
  startedHere = undefined;
  dropDraft(key);
}
