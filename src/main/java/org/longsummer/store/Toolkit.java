package org.longsummer.store;

import org.longsummer.chain.visit.InstrumentKind;
import org.longsummer.chain.visit.Instruments;

/**
 * What a technician reads with.
 *
 * @param technician whose; visits name him so
 * @param thermometer kind, for return and supply air
 * @param ambientThermometer kind, for outdoor air
 * @param hygrometer kind
 * @param clamp kind
 * @param voltmeter kind
 * @param instruments the standard uncertainties that are used: of the kinds, or of the sheets of his own instruments
 */
public record Toolkit(String technician, InstrumentKind thermometer, InstrumentKind ambientThermometer, InstrumentKind hygrometer,
        InstrumentKind clamp, InstrumentKind voltmeter, Instruments instruments) {}
