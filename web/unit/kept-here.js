// The unit's page without a signal: what this device keeps of it, judged here.

import { openUnit } from '../shared/judging.js';
import { momentText } from '../shared/words.js';

const likely = ({ condition, conditions }) => (condition === 'none' ? '' : conditions.find(one => one.condition === condition)?.phrase ?? '');

function rowOf(verdict, { at, boxes }) {
  return { id: verdict.visit_id, at, technician: boxes.technician, counts: true, state: verdict.state, condition: likely(verdict), split: verdict.split,
    amps: verdict.amps, work: (boxes.work_done ?? '').split(',').filter(Boolean) };
}

function sayWhen({ as_of_ms: asOf }, waiting) {
  const known = asOf ? `as the server knew it on ${momentText(new Date(asOf - new Date(asOf).getTimezoneOffset() * 60_000).toISOString())}` : 'as it was entered on this phone';
  return `No signal: this is kept on this phone, ${known}${waiting.length ? `, with ${waiting.length} that wait to be sent` : ''}. Charts, photos and the plate need a signal.`;
}

/** @returns the page's answer as far as it can be told here, with `kept_here`: words about it; throws where nothing is kept */
export async function pageKeptHere(unitId) {
  const opened = await openUnit(unitId);
  const { row, waiting } = opened;
  const verdicts = opened.verdicts();
  const judged = verdicts.filter(verdict => verdict.state !== 'retake');
  const last = verdicts.at(-1);
  return { kept_here: sayWhen(row, waiting), visits: verdicts.map(verdict => rowOf(verdict, opened.visit(verdict.visit_id))), standing: judged.at(-1),
    state: judged.at(-1)?.state ?? 'never_judged', to_retake: last?.state === 'retake' ? last : undefined,
    unit: { id: unitId, label: row.unit.label, depot: row.unit.depot, vehicle: row.vehicle, roof_position: row.roof_position, duty: 'in_service' } };
}
