// Cautions, shown where work is proposed. Common sense of the trade; local codes and the maker's manual come first.

import { element } from './dom.js';

const MAINS = 'Mains voltage at the clamp and in the junction box: qualified people only. Isolate, lock and tag; shore cord unplugged, '
  + 'generator auto-start and inverter off.';
const CAPACITOR = 'A capacitor holds its charge: discharge it through a resistor and verify with a meter before touching it.';
const ROOF = 'Roof: edge, wet, wind, lightning, load rating; tie the ladder. Leave the phone below.';
const REFRIGERANT = 'Refrigerant: venting is illegal in many countries, the sealed circuit is for certified people only, and some '
  + 'refrigerants are flammable.';
const GENERATOR = 'Generator running: carbon monoxide.';
const CLEANER = 'Coil cleaner: eye protection and gloves; keep water out of the electrical box; let the coil dry 30 minutes.';

const BY_WORK = {
  filter: [], evaporator_coil: [MAINS, CLEANER], condenser_coil: [ROOF, MAINS, CLEANER], capacitor: [ROOF, MAINS, CAPACITOR],
  divider: [MAINS], fan_motor: [ROOF, MAINS, CAPACITOR], sealed_system: [ROOF, MAINS, REFRIGERANT], unit_replaced: [ROOF, MAINS, REFRIGERANT],
};
const BY_CONDITION = {
  condenser_fouling: [ROOF, MAINS, CLEANER], evaporator_fouling: [MAINS, CLEANER], refrigerant_loss: [REFRIGERANT, MAINS],
  compressor_wear: [REFRIGERANT, MAINS], capacitor_weak: [ROOF, MAINS, CAPACITOR], air_recirculation: [MAINS], other: [ROOF, MAINS, CAPACITOR],
  not_cooling: [ROOF, MAINS, CAPACITOR],
};

export const MEASURING = [MAINS, ROOF, GENERATOR];

export const forWork = works => [...new Set(works.flatMap(work => BY_WORK[work] ?? []))];
export const forCondition = condition => BY_CONDITION[condition] ?? [];

/** The same, folded to one line that names the dangers. */
export function foldedCautions(cautions, line) {
  return element('aside', { class: 'cautions', 'aria-label': 'Cautions' }, element('details', {}, element('summary', {}, line),
    element('ul', {}, cautions.map(caution => element('li', {}, caution)))));
}

/** Nothing when there is nothing to be careful about. */
export function cautionBox(cautions) {
  if (!cautions.length) return undefined;
  return element('aside', { class: 'cautions', 'aria-label': 'Cautions' }, element('h3', {}, 'Before you touch it'),
    element('ul', {}, cautions.map(caution => element('li', {}, caution))));
}
