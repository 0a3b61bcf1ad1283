// What the round's pages share: where a stop is, what is said of its unit, and which boxes are read in which order.

import { element, named, namedList } from '../shared/dom.js';
import { system } from '../shared/reader.js';
import { dayText, stateClass, stateText } from '../shared/words.js';

export const place = ({ row, place: spot }) => [row && `row ${row}`, spot && `place ${spot}`].filter(Boolean).join(', ');

/** Name and unit of measure as the reader has it. */
export const unitText = unit => (unit === 'temperature' ? (system() === 'us' ? '°F' : '°C') : unit);

/** The line under a stop's name: where it stands, and what it is. */
export const whereNodes = stop => namedList([place(stop), stop.vehicle === stop.label ? '' : stop.vehicle, stop.roof_position,
  [stop.make, stop.model].filter(Boolean).join(' '), stop.serial && `serial ${stop.serial}`]);

export function stateLine(stop) {
  return element('p', { class: 'likely-line' }, element('span', { class: stateClass(stop.state) }, stateText(stop.state)),
    stop.likely ? ` ${stop.likely}` : '', stop.to_retake ? ' · last reading to be retaken' : '',
    stop.last_visit_at ? ` · last visit ${dayText(stop.last_visit_at)}` : ' · never visited');
}

export const nameOf = stop => named(stop.label);

/** Stops with the depot's name before the first of each. */
export function byDepot(stops, lay) {
  let depot;
  return stops.map((stop, index) => {
    const head = stop.depot === depot ? '' : element('h2', { class: 'depot-head' }, stop.depot ? named(stop.depot) : 'No depot');
    depot = stop.depot;
    return [head, lay(stop, index)];
  });
}
