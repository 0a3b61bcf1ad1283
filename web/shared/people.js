// Words about people that their pages share.

export const ROLES = { technician: 'Technician', manager: 'Manager', administrator: 'Administrator' };
export const RIGHTS = { see: 'look', visit: 'look, and enter visits and units', look_after: 'look, enter, bring files, correct anybody’s visits' };
export const KINDS = { browser: 'Browser', phone: 'Phone' };

export const depotsText = depots => (!depots ? 'all depots' : depots.length ? depots.join(', ') : 'no depot');

const moment = new Intl.DateTimeFormat(undefined, { day: 'numeric', month: 'short', year: 'numeric', hour: 'numeric', minute: '2-digit' });

/** A moment on the reader's own clock. */
export const localMoment = text => moment.format(new Date(text));
