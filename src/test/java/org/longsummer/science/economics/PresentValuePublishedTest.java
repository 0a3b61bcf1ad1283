package org.longsummer.science.economics;

import org.junit.jupiter.api.Test;
import org.longsummer.evidence.Comparison;
import org.longsummer.evidence.ReferenceTable;

/** Against printed factors: half of the last printed digit. */
class PresentValuePublishedTest {
    @Test
    void printedFactors() {
        try (Comparison comparison = Comparison.absolute(getClass(), "present-value factors P/F and P/A", "1", "nist-hb135", 0.00005)) {
            for (ReferenceTable.Row row : ReferenceTable.read("present_value_factors").rows()) {
                double rate = row.number("rate_pct") / 100;
                double periods = row.number("periods");
                double factor = row.text("factor").equals("P/F") ? PresentValue.ofSingle(rate, periods) : PresentValue.ofUniform(rate, periods);
                comparison.point(row.text("factor") + " " + row.text("rate_pct") + " %, " + row.text("periods"), factor, row.number("printed"));
            }
        }
    }
}
