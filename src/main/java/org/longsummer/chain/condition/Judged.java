package org.longsummer.chain.condition;

import java.util.ArrayList;
import java.util.List;
import org.longsummer.chain.learning.Lesson;
import org.longsummer.chain.screening.Finding;

/**
 * A judged visit.
 *
 * @param verdict what it says of the unit
 * @param lesson what it teaches across units
 */
public record Judged(Verdict verdict, Lesson lesson) {

    /** The same verdict with a remark, teaching nothing a second time. */
    public Judged savedTwice(Finding remark) {
        List<Finding> findings = new ArrayList<>(verdict.findings());
        findings.add(remark);
        return new Judged(verdict.withFindings(findings), lesson.ofNoWeight());
    }
}
