package org.longsummer.chain.condition;

import java.util.Optional;
import java.util.Set;
import org.longsummer.chain.visit.Work;
import org.longsummer.science.uncertainty.Uncertain;

/**
 * What work changed, from two visits that share probe, meter and model error.
 *
 * @param beforeVisitId the visit before the work
 * @param work what was done in between
 * @param splitChange change of the split departure, ln, with its own smaller uncertainty
 * @param ampsChange change of the amps departure, ln
 * @param outcome what it says
 */
public record BeforeAfter(String beforeVisitId, Set<Work> work, Optional<Uncertain> splitChange, Optional<Uncertain> ampsChange,
        Outcome outcome) {

    /** What the change says about the work. */
    public enum Outcome {
        HELPED("helped"),
        DID_NOT_HELP("did not help: it is the machine"),
        CANNOT_TELL("changed too little to tell; read again in comparable weather"),
        NOTHING_TO_HELP("changed nothing to speak of, and nothing had shown that it was needed");

        private final String phrase;

        Outcome(String phrase) {
            this.phrase = phrase;
        }

        public String phrase() {
            return phrase;
        }
    }
}
