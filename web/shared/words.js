// Dates as the reader's device writes them, and the few words that pages share.

const day = new Intl.DateTimeFormat(undefined, { day: 'numeric', month: 'short', year: 'numeric', timeZone: 'UTC' });
const month = new Intl.DateTimeFormat(undefined, { month: 'long', year: 'numeric', timeZone: 'UTC' });
const clock = new Intl.DateTimeFormat(undefined, { hour: 'numeric', minute: '2-digit', timeZone: 'UTC' });

/** The wall clock of the place, as if it were UTC: '2026-07-02T14:05:00-06:00' is 14:05 wherever the reader is. */
const wallClock = text => new Date(text.length === 10 ? `${text}T00:00:00Z` : text.replace(/(Z|[+-]\d\d:\d\d)$/, '') + 'Z');

export const dayText = text => (text ? day.format(wallClock(text)) : '');
export const monthText = text => (text ? month.format(wallClock(text)) : '');
export const momentText = text => (text ? `${day.format(wallClock(text))}, ${clock.format(wallClock(text))}` : '');
export const wallTime = text => wallClock(text).getTime();

const STATES = { steady: 'steady', drifting: 'drifting', act: 'act', retake: 'retake', never_judged: 'not judged yet' };
export const stateText = state => STATES[state] ?? state;
export const stateClass = state => `state ${state === 'never_judged' ? 'never' : state}`;

/** Where a unit stands, without what its name says already. */
export const placeText = (label, ...parts) => parts.filter(text => text && !label.toLowerCase().includes(text.toLowerCase())).join(' · ');

export const count = (number, one, many) => `${number} ${number === 1 ? one : many}`;

/** Reader's words for a share: '8 % below', '12 % above', 'as expected'. */
export function asideText(percent) {
  const rounded = Math.abs(percent) < 10 ? percent.toFixed(1) : percent.toFixed(0);
  if (Number(rounded) === 0) return 'as expected';
  return `${rounded.replace('-', '')} % ${percent < 0 ? 'below' : 'above'}`;
}
