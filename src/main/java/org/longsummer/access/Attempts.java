package org.longsummer.access;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The brake on guessing passwords. Every failure costs one of a stock that refills with time; there are three stocks: a name from one
 * address, an address whatever the name, and a name from wherever. Nobody is locked out for good, and one who guesses from elsewhere
 * does not hinder the person at his own desk until the guessing is massive.
 *
 * <p>Kept in memory and bounded; a restart forgets it.
 */
public final class Attempts {
    private static final int STOCKS_KEPT = 20_000;

    private final Clock clock;
    private final Map<String, Stock> stocks = new LinkedHashMap<>(16, 0.75f, true);

    public Attempts(Clock clock) {
        this.clock = clock;
    }

    /** How many failures a stock allows at once, and how long one takes to come back. */
    private enum Limit {
        NAME_AND_ADDRESS(5, Duration.ofMinutes(3)),
        ADDRESS(30, Duration.ofMinutes(1)),
        NAME(50, Duration.ofMinutes(1));

        private final int most;
        private final Duration refill;

        Limit(int most, Duration refill) {
            this.most = most;
            this.refill = refill;
        }
    }

    private static final class Stock {
        private double left;
        private Instant asOf;

        private Stock(double left, Instant asOf) {
            this.left = left;
            this.asOf = asOf;
        }

        private void refill(Limit limit, Instant now) {
            double back = (double) Math.max(0, Duration.between(asOf, now).toMillis()) / limit.refill.toMillis();
            left = Math.min(limit.most, left + back);
            asOf = now;
        }
    }

    /**
     * Takes one attempt, before the password is looked at.
     *
     * @param name as typed; whether somebody has it makes no difference
     * @param address where it comes from
     * @return empty when it may go on; otherwise how long to wait
     */
    public synchronized Optional<Duration> take(String name, String address) {
        Instant now = clock.instant();
        Duration wait = Duration.ZERO;
        for (Limit limit : Limit.values()) {
            Stock stock = stock(limit, name, address, now);
            if (stock.left < 1) {
                Duration needed = Duration.ofMillis((long) Math.ceil((1 - stock.left) * limit.refill.toMillis()));
                wait = needed.compareTo(wait) > 0 ? needed : wait;
            }
        }
        if (!wait.isZero()) {
            return Optional.of(wait);
        }
        List.of(Limit.values()).forEach(limit -> stock(limit, name, address, now).left--);
        return Optional.empty();
    }

    /** Gives the attempt back: the password was right. The name from this address starts afresh. */
    public synchronized void succeeded(String name, String address) {
        Instant now = clock.instant();
        for (Limit limit : Limit.values()) {
            Stock stock = stock(limit, name, address, now);
            stock.left = limit == Limit.NAME_AND_ADDRESS ? limit.most : Math.min(limit.most, stock.left + 1);
        }
    }

    private Stock stock(Limit limit, String name, String address, Instant now) {
        String who = limit == Limit.ADDRESS ? "" : Person.folded(name);
        String key = limit.name() + "\n" + (limit == Limit.NAME ? "" : network(address)) + "\n" + who;
        Stock stock = stocks.computeIfAbsent(key, unseen -> new Stock(limit.most, now));
        stock.refill(limit, now);
        if (stocks.size() > STOCKS_KEPT) {
            stocks.remove(stocks.keySet().iterator().next());
        }
        return stock;
    }

    /** One household or office: an IPv4 address, or the first half of an IPv6 address. */
    private static String network(String address) {
        String[] groups = address.split(":", -1);
        return groups.length < 3 ? address : String.join(":", List.of(groups).subList(0, Math.min(4, groups.length)));
    }
}
