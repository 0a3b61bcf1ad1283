package org.longsummer.science.statistics;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.longsummer.evidence.Comparison;
import org.longsummer.evidence.ReferenceTable;

/** Against the estimates printed for a censored life test. */
class WeibullPublishedTest {
    private static final String SOURCE = "nist-ehandbook";

    /** The printed shape is given as 1.7207 and as 1.7208; the printed scale stopped 0.0004 before the maximum of the likelihood. */
    @Test
    void estimatesFromFailuresAndCensoredLives() {
        List<Lifetime> lives = new ArrayList<>();
        for (ReferenceTable.Row row : ReferenceTable.read("nist_weibull_censored").rows()) {
            lives.add(new Lifetime(0, row.number("time_h"), row.text("event").equals("1")));
        }
        Weibull fit = WeibullFit.of(lives).orElseThrow();
        try (Comparison shape = Comparison.absolute(getClass(), "Weibull shape, censored lives", "1", SOURCE, 0.00015);
                Comparison scale = Comparison.absolute(getClass(), "Weibull scale, censored lives", "h", SOURCE, 0.0005)) {
            shape.point("20 units, 10 failed", fit.shape(), 1.7207);
            scale.point("20 units, 10 failed", fit.scale(), 606.5280);
        }
    }
}
