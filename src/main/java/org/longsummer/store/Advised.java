package org.longsummer.store;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.visit.Work;
import org.longsummer.chain.weighing.Advice;
import org.longsummer.chain.weighing.Option;
import org.longsummer.quantity.Money;

/**
 * What was worth doing about a unit on a day, in short.
 *
 * @param option keep, clean, repair or replace
 * @param works which works; empty for keeping
 * @param timing by when
 * @param saving expected saving against keeping
 * @param waitingCosts what thirty days of waiting are expected to cost, 0 or more: in winter it may even save a little interest
 * @param limitOn the day by which what is wrong takes it below the limit, more likely than not; absent where there is no such day
 * @param on the day on which it was worked out
 */
public record Advised(Option option, List<Work> works, Advice.Timing timing, Money saving, Money waitingCosts, Optional<LocalDate> limitOn,
        LocalDate on) {
    public Advised {
        works = List.copyOf(works);
    }

    static Advised of(Advice advice, Optional<LocalDate> limitOn, LocalDate on) {
        Money waiting = advice.waitingCosts();
        return new Advised(advice.option(), advice.works(), advice.timing(), advice.saving(),
                waiting.minor() < 0 ? Money.zero(waiting.currency()) : waiting, limitOn, on);
    }
}
