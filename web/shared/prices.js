// How figures of price lists are said.

import { inDecimals } from './numbers.js';

const FROM = { default: 'a default of ours', fleet: 'the fleet’s', depot: 'the depot’s' };

export const figureText = ({ own, wider, unit }) => `${inDecimals(own || wider)}${unit ? ` ${unit}` : ''}`;
export const sourceText = ({ own, wider_from: from }) => (own ? 'changed for this unit' : FROM[from]);
export const widerText = ({ wider, wider_from: from, unit }) => `${inDecimals(wider)}${unit ? ` ${unit}` : ''}, ${FROM[from]}`;
