package org.longsummer.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.condition.Probabilities;
import org.longsummer.chain.condition.Severity;
import org.longsummer.chain.condition.State;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.science.uncertainty.Uncertain;

/**
 * What lists, charts and files need of a verdict without judging again. The reasons are not kept: judge again to see them.
 *
 * @param visitId the visit
 * @param unitId its unit
 * @param visitedAt its moment
 * @param state steady, drifting, act or retake
 * @param condition the likeliest condition on drifting and act, else none
 * @param probabilities of none, the six and other
 * @param probabilityOfImpact now
 * @param since the likeliest day on which the fault began
 * @param expectedSplit expected split
 * @param expectedSplitU standard uncertainty of measured minus expected split
 * @param expectedAmps expected amps
 * @param expectedAmpsU standard uncertainty of measured minus expected amps
 * @param splitDeparture ln of measured over expected
 * @param ampsDeparture ln of measured over expected
 * @param severity what the fault costs now
 * @param closing day of the closing that was used
 */
public record StoredVerdict(String visitId, String unitId, Instant visitedAt, State state, Condition condition,
        Probabilities probabilities, double probabilityOfImpact, Optional<LocalDate> since,
        Optional<TemperatureDifference> expectedSplit, Optional<TemperatureDifference> expectedSplitU, Optional<Current> expectedAmps,
        Optional<Current> expectedAmpsU, Optional<Uncertain> splitDeparture, Optional<Uncertain> ampsDeparture,
        Optional<Severity> severity, Optional<LocalDate> closing) {}
