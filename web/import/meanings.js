// The columns of our files in words, each with its unit of measure.

import { READING_NAMES, columnsOf } from '../shared/readings.js';

const readings = Object.fromEntries(Object.entries(READING_NAMES).flatMap(columnsOf));

const hours = Object.fromEntries(Array.from({ length: 12 }, (_, month) => [`run_hours_${month + 1}`, `Running hours a day, month ${month + 1}`]));

export const MEANINGS = { ...readings, ...hours,
  unit_id: 'Unit’s id', label: 'Unit’s name', site: 'Depot', vehicle: 'Vehicle', position: 'Place on the roof', serial: 'Serial number', make: 'Make', model: 'Model',
  nominal_btuh: 'Nominal capacity, Btu/h', refrigerant: 'Refrigerant', rated_amps: 'Rated amps, A', rated_amps_kind: 'Kind of rated amps', rated_volts: 'Rated volts, V',
  ducted: 'Ducted, yes or no', installed_on: 'Installed on', altitude_ft: 'Altitude, ft', altitude_m: 'Altitude, m', capacitor_label_uf: 'Run capacitor’s label, µF',
  soft_starter: 'Soft starter, yes or no', variable_speed: 'Variable speed, yes or no', owner: 'Owner', warranty_until: 'Warranty until', duty: 'In service or not',
  visit_id: 'Visit’s id', visited_at: 'Day and time of the visit', technician: 'Technician', supply_at: 'Supply air read at', ambient_at: 'Outdoor air read at',
  fan_speed: 'Fan speed', power_source: 'Power source', filter_condition: 'Filter', coil_condition: 'Coil', work_done: 'Work done', iced_coil: 'Iced coil, yes or no', notes: 'Note',
  time_zone: 'Time zone', season_opens: 'Season opens', season_closes: 'Season closes', scope: 'Fleet, depot or unit', name: 'Name of the depot or unit', key: 'Figure',
  value: 'Value', meaning: 'Meaning', plan_id: 'Plan’s id', works: 'Work planned', planned_for: 'Planned for', price: 'Price', currency: 'Currency', note: 'Note',
  planned_by: 'Planned by', planned_at: 'Planned when', ended_as: 'Done or dropped', ended_by: 'Ended by', ended_at: 'Ended when',
  typed_system: 'Typed in (us or si)', volts_off: 'Volts with the unit off, V', one_probe: 'One thermometer for both, yes or no', probe_u_f: 'Thermometer’s uncertainty, °F',
  ambient_probe_u_f: 'Outdoor thermometer’s uncertainty, °F', humidity_u_pct: 'Hygrometer’s uncertainty, %', clamp_u_pct: 'Clamp’s uncertainty, %',
  clamp_floor_u_a: 'Clamp’s smallest uncertainty, A', voltage_u_v: 'Voltmeter’s uncertainty, V', saved_by: 'Saved by', received_at: 'Received when', corrects: 'Corrects visit',
  correction_reason: 'Why corrected', withdrawn_by: 'Withdrawn by', withdrawn_at: 'Withdrawn when', withdrawal_reason: 'Why withdrawn' };
