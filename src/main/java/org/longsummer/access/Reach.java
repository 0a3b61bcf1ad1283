package org.longsummer.access;

import java.util.Collection;
import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * How far somebody sees: all depots, or some. A unit that stands at no depot is seen only by those who see all.
 *
 * @param everywhere sees all depots, present and future
 * @param depots names of the depots seen; empty when {@code everywhere}
 */
public record Reach(boolean everywhere, SortedSet<String> depots) {
    public static final Reach EVERYWHERE = new Reach(true, new TreeSet<>());

    public Reach {
        depots = Collections.unmodifiableSortedSet(new TreeSet<>(everywhere ? new TreeSet<>() : depots));
    }

    /** These depots and no others; none of them sees nothing. */
    public static Reach of(Collection<String> depots) {
        return new Reach(false, new TreeSet<>(depots));
    }

    /** @param depot name of a depot, empty for a unit that stands at none */
    public boolean includes(String depot) {
        return everywhere || depots.contains(depot);
    }

    /** What both see. */
    public Reach within(Reach other) {
        if (everywhere) {
            return other;
        }
        return other.everywhere ? this : of(depots.stream().filter(other.depots::contains).toList());
    }
}
