package org.longsummer.chain.departure;

import java.util.Optional;
import org.longsummer.chain.screening.Screening;
import org.longsummer.science.uncertainty.Uncertain;

/**
 * Measured against expected.
 *
 * @param screening the visit and what its raw readings gave away
 * @param expectedSplit absent when nothing can be expected, for example without any air temperature
 * @param expectedAmps absent when nothing can be expected, for example from a variable-speed unit
 * @param split natural logarithm of measured over expected split; absent when it was not read or cannot be compared
 * @param amps natural logarithm of measured over expected amps; absent when they were not read or cannot be compared
 */
public record Departure(Screening screening, Optional<ExpectedSplit> expectedSplit, Optional<ExpectedAmps> expectedAmps,
        Optional<Uncertain> split, Optional<Uncertain> amps) {}
