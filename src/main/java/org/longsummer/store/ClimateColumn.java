package org.longsummer.store;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.longsummer.chain.season.Climate;
import org.longsummer.chain.season.SeasonClock;

/** A depot's climate as a column: first and last day of the season, then twelve run-hours a day, with spaces between. */
final class ClimateColumn {
    /** Units of one depot share a clock, which is a thousand times larger than what it is made from. */
    private static final Map<String, SeasonClock> CLOCKS = new ConcurrentHashMap<>();
    private static final int MOST_CLOCKS = 2_000;

    private ClimateColumn() {}

    static String text(Climate climate) {
        List<String> words = new ArrayList<>(List.of(day(climate.opens()), day(climate.closes())));
        climate.runHoursPerDay().forEach(hours -> words.add(hours.toString()));
        return String.join(" ", words);
    }

    static Climate climate(String text) {
        String[] words = text.split(" ");
        return new Climate(Arrays.stream(words).skip(2).map(Double::valueOf).toList(), MonthDay.parse("--" + words[0]),
                MonthDay.parse("--" + words[1]));
    }

    static Optional<SeasonClock> clock(Optional<String> text) {
        if (CLOCKS.size() > MOST_CLOCKS) {
            CLOCKS.clear();
        }
        return text.map(some -> CLOCKS.computeIfAbsent(some, given -> new SeasonClock(climate(given))));
    }

    private static String day(MonthDay day) {
        return day.toString().substring(2);
    }
}
