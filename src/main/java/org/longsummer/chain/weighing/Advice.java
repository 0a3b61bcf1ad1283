package org.longsummer.chain.weighing;

import java.util.List;
import java.util.Optional;
import org.longsummer.chain.visit.Work;
import org.longsummer.quantity.Money;

/**
 * What is worth doing.
 *
 * @param option keep, clean, repair or replace
 * @param works which works, most worthwhile first; empty for keeping
 * @param saving expected saving against keeping; 0 for keeping
 * @param bestProbability probability that it is the cheapest of the four once the state of the unit were known
 * @param matters whether the difference to the next option is worth a thought
 * @param runnerUp the next cheapest option
 * @param runnerUpCostsMore by how much it is expected to be dearer
 * @param timing when
 * @param waitingCosts what thirty days of waiting are expected to cost; 0 for keeping
 * @param notCarried an option that is cheapest in figures and that the history cannot carry
 * @param whenOnSite works not worth a call that are worth doing when somebody is there anyway
 */
public record Advice(Option option, List<Work> works, Money saving, double bestProbability, boolean matters, Option runnerUp,
        Money runnerUpCostsMore, Timing timing, Money waitingCosts, Optional<Option> notCarried, List<Work> whenOnSite) {

    /** By when. */
    public enum Timing {
        /** Nothing to do; the next check of the season is soon enough. */
        NEXT_CHECK("look again at the next check of the season"),
        /** Nothing to pay for now, but something may be building up. */
        LOOK_AGAIN_IN_30_DAYS("look again in 30 days"),
        /** The season is closed. */
        BEFORE_SEASON_OPENS("before the season opens"),
        /** Waiting a month costs little. */
        WITHIN_30_DAYS("within 30 days"),
        /** Waiting costs. */
        NOW("now");

        private final String phrase;

        Timing(String phrase) {
            this.phrase = phrase;
        }

        public String phrase() {
            return phrase;
        }
    }
}
