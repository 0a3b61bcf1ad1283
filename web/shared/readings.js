// What the readings are called, on every page the same: by the start of their box's name, with the unit in which a file gives them.

export const READING_NAMES = {
  return_db: ['Return air', 'temperature'],
  return_rh_pct: ['Return humidity', '%'],
  return_wb: ['Return wet bulb', 'temperature'],
  return_dp: ['Return dew point', 'temperature'],
  supply_db: ['Supply air', 'temperature'],
  ambient_db: ['Outdoor air', 'temperature'],
  ambient_rh_pct: ['Outdoor humidity', '%'],
  volts: ['Volts under load', 'V'],
  amps: ['Amps', 'A'],
  run_minutes: ['Minutes it had run', 'min'],
  condenser_entering_db: ['Air entering the condenser', 'temperature'],
  condenser_leaving_db: ['Air leaving the condenser', 'temperature'],
  room_db: ['Room air', 'temperature'],
  return_second_db: ['Return air by a second thermometer', 'temperature'],
  fan_only_amps: ['Fan-only amps', 'A'],
  start_amps: ['Start peak', 'A'],
  capacitor_uf: ['Run capacitor', 'µF'],
};

/** Its column or columns in a file, with their words. */
export const columnsOf = ([name, [words, unit]]) => (unit === 'temperature' ? [[`${name}_f`, `${words}, °F`], [`${name}_c`, `${words}, °C`]]
  : [[name, `${words}, ${unit}`]]);
