// Judges with the core that was compiled to JavaScript: the same Java, the same answers as the server's, with or without a signal.

import { get, Refusal } from './api.js';
import { fleetKept, unitKept } from './pocket.js';
import { refreshUnit, waitingFor } from './sending.js';
import { system } from './reader.js';

const PATIENCE = 4_000;
const NOT_HERE = { field: '', given: '', limit: 'There is no signal, and this unit is not kept on this phone.',
  remedy: 'Choose its depot under “On this phone” while there is a signal.' };

/** The unit's record: the server's where it answers soon, else the one kept here. */
async function record(unitId) {
  try {
    return { row: await refreshUnit(unitId, { signal: AbortSignal.timeout(PATIENCE) }), fresh: true };
  } catch (failure) {
    const row = await unitKept(unitId).catch(() => undefined);
    if (row) return { row, fresh: false, gone: failure.status === 404 && !row.own };
    throw failure.status ? failure : new Refusal(0, [NOT_HERE]);
  }
}

/** Minutes from UTC on the clock of a time zone at what that clock shows, '2026-07-02T14:05'; undefined for a zone nobody knows. */
export function offsetMinutes(timeZone, shown) {
  if (!timeZone || !/^\d{4}-\d\d-\d\dT\d\d:\d\d/.test(shown ?? '')) return undefined;
  const asUtc = Date.parse(`${shown.slice(0, 16)}Z`);
  const at = moment => {
    const parts = Object.fromEntries(new Intl.DateTimeFormat('en-US', { timeZone, hourCycle: 'h23', year: 'numeric', month: 'numeric', day: 'numeric',
      hour: 'numeric', minute: 'numeric' }).formatToParts(moment).map(({ type, value }) => [type, Number(value)]));
    return (Date.UTC(parts.year, parts.month - 1, parts.day, parts.hour, parts.minute) - moment) / 60_000;
  };
  try {
    const first = at(asUtc - at(asUtc) * 60_000);
    return Math.round(at(asUtc - first * 60_000));
  } catch {
    return undefined;
  }
}

/**
 * Opens a unit for judging.
 * @returns {row, fresh, gone, judge(form), visit(id), verdicts()}
 */
export async function openUnit(unitId) {
  const [{ row, fresh, gone }, door, fleet, waiting] = await Promise.all([record(unitId), import('../phone/core.js'), fleetKept(), waitingFor(unitId)]);
  const known = new Set(row.visits.map(visit => visit.id));
  const opened = door.open(JSON.stringify({ unit: row.unit, visits: row.visits, closings: row.closings ?? fleet?.closings ?? {}, now_ms: Date.now(),
    waiting: waiting.filter(item => !known.has(item.id)).map(({ id, boxes, corrects }) => ({ id, boxes, corrects })) }));
  const ask = (method, question) => JSON.parse(opened[method](JSON.stringify({ system: system(), now_ms: Date.now(), ...question })));
  return { row, fresh, gone, waiting, judge: form => ask('judge', form), visit: id => ask('visit', { id }), verdicts: () => ask('verdicts', {}) };
}

/** A new unit's form: {unit, problems}. */
export async function readNewUnit(question) {
  const door = await import('../phone/core.js');
  return JSON.parse(door.newUnit(JSON.stringify(question)));
}

/** Depots with their names, counts and clocks; those kept when the server does not answer. */
export const depotsKnown = () => get('offline/depots').catch(async () => (await fleetKept())?.depots ?? []);
