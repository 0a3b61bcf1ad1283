// What this reader likes, kept on this device only.

const SYSTEM = 'longsummer.units';
const NAME = 'longsummer.technician';
const DEMO = 'longsummer.demo';
const LAST_UNITS = 'longsummer.last-units';

function keep(key, value) {
  try {
    localStorage.setItem(key, value);
    return true;
  } catch {
    return false;
  }
}

function kept(key) {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

const DECIMAL = 'longsummer.decimal';
const DATES = 'longsummer.dates';

/** 'point' or 'comma'; before any choice, by the language of the device. */
export const decimalSign = () => kept(DECIMAL) ?? ((1.5).toLocaleString().includes(',') ? 'comma' : 'point');
export const chosenDecimalSign = () => kept(DECIMAL) ?? '';
export const chooseDecimalSign = value => choose(DECIMAL, value);

/** 'day-first', 'month-first' or 'year-first'; empty: as the device writes dates. */
export const chosenDates = () => kept(DATES) ?? '';
export const chooseDates = value => choose(DATES, value);

function choose(key, value) {
  if (value) return keep(key, value);
  try {
    localStorage.removeItem(key);
  } catch {
    // nothing was kept
  }
  return true;
}

/** 'us' (degrees Fahrenheit, feet) or 'si' (degrees Celsius, metres); before any choice, by the language of the device. */
export function system() {
  return kept(SYSTEM) ?? (/^en-US\b/.test(navigator.language) ? 'us' : 'si');
}

export function chooseSystem(value) {
  keep(SYSTEM, value);
}

export const technician = () => kept(NAME) ?? '';
export const rememberTechnician = name => keep(NAME, name);

/** Whether the record was the demo's when the server was last heard. */
export const demoKnown = () => kept(DEMO) === 'yes';
export const rememberDemo = isDemo => keep(DEMO, isDemo ? 'yes' : 'no');

/** Ids of the units last worked on, latest first. */
export const lastUnits = () => JSON.parse(kept(LAST_UNITS) ?? '[]');
export const rememberUnit = id => keep(LAST_UNITS, JSON.stringify([id, ...lastUnits().filter(other => other !== id)].slice(0, 8)));

/** Something typed that must survive a reload; undefined when there is none. */
export function draft(key) {
  const text = kept(`longsummer.draft.${key}`);
  return text ? JSON.parse(text) : undefined;
}

/** @returns whether the device could keep it */
export const keepDraft = (key, value) => keep(`longsummer.draft.${key}`, JSON.stringify(value));

export function dropDraft(key) {
  try {
    localStorage.removeItem(`longsummer.draft.${key}`);
  } catch {
    // nothing was kept, so nothing is left
  }
}
