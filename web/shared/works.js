// Work by its words in files, as pages name what is to be done.

export const WORKS = { filter: 'change the filter', evaporator_coil: 'clean the evaporator coil', condenser_coil: 'clean the condenser coil',
  capacitor: 'replace the run capacitor', divider: 'seal the divider', fan_motor: 'replace the fan motor',
  sealed_system: 'have the sealed circuit repaired', unit_replaced: 'replace the unit' };
