// Dates as the reader writes them, and the few words that pages share.

import { namedList } from './dom.js';
import { numberText } from './numbers.js';
import { chosenDates } from './reader.js';

const LOCALES = { 'day-first': 'en-GB', 'month-first': 'en-US' };
const locale = LOCALES[chosenDates()];
const yearFirst = chosenDates() === 'year-first';

const day = new Intl.DateTimeFormat(locale, { day: 'numeric', month: 'short', year: 'numeric', timeZone: 'UTC' });
const month = new Intl.DateTimeFormat(locale, { month: 'long', year: 'numeric', timeZone: 'UTC' });
const clock = new Intl.DateTimeFormat(locale, yearFirst ? { hour: '2-digit', minute: '2-digit', hourCycle: 'h23', timeZone: 'UTC' }
  : { hour: 'numeric', minute: '2-digit', timeZone: 'UTC' });

/** The wall clock of the place, as if it were UTC: '2026-07-02T14:05:00-06:00' is 14:05 wherever the reader is. */
const wallClock = text => new Date(text.length === 10 ? `${text}T00:00:00Z` : text.replace(/(Z|[+-]\d\d:\d\d)$/, '') + 'Z');

const dayOf = date => (yearFirst ? date.toISOString().slice(0, 10) : day.format(date));

export const dayText = text => (text ? dayOf(wallClock(text)) : '');
/** A sentence whose days stand as 2026-07-02, with the reader's days. */
export const withDays = text => text.replace(/\b\d{4}-\d\d-\d\d\b/g, day => dayText(day));
export const monthText = text => (text ? month.format(wallClock(text)) : '');
export const momentText = text => (text ? `${dayOf(wallClock(text))}, ${clock.format(wallClock(text))}` : '');
export const wallTime = text => wallClock(text).getTime();

/** A moment in UTC on this device's own clock: for what was recorded, not for what was read at a depot. */
export const recordedText = text => {
  const at = new Date(text);
  return momentText(new Date(at.getTime() - at.getTimezoneOffset() * 60_000).toISOString());
};

const STATES = { steady: 'steady', drifting: 'drifting', act: 'act', retake: 'retake', never_judged: 'not judged yet' };
export const stateText = state => STATES[state] ?? state;
export const stateClass = state => `state ${state === 'never_judged' ? 'never' : state}`;

/** Where a unit stands, without what its name says already. */
export const placeTexts = (label, ...parts) => parts.filter(text => text && !label.toLowerCase().includes(text.toLowerCase()));

/** The same, each name kept in its own direction. */
export const placeNodes = (label, ...parts) => namedList(placeTexts(label, ...parts));

export const count = (number, one, many) => `${number} ${number === 1 ? one : many}`;

/** Reader's words for a share: '8 % below', '12 % above', 'as expected'. */
export function asideText(percent) {
  const decimals = Math.abs(percent) < 10 ? 1 : 0;
  if (Number(percent.toFixed(decimals)) === 0) return 'as expected';
  const rounded = numberText(percent, decimals);
  return `${rounded.replace('-', '')} % ${percent < 0 ? 'below' : 'above'}`;
}
