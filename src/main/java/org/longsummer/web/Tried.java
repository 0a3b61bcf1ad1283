package org.longsummer.web;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.longsummer.files.Outcome;

/** What trying files out said: how many rows would become what, and the first of each. */
final class Tried {
    /** So many rows of each sort are told; the rest are counted. */
    static final int TOLD = 100;

    private final Map<Outcome.Becomes, Integer> counts = new EnumMap<>(Outcome.Becomes.class);
    private final Map<Outcome.Becomes, List<Outcome>> rows = new EnumMap<>(Outcome.Becomes.class);
    private final List<String> remarks = new ArrayList<>();

    void note(Outcome outcome) {
        counts.merge(outcome.becomes(), 1, Integer::sum);
        List<Outcome> told = rows.computeIfAbsent(outcome.becomes(), becomes -> new ArrayList<>());
        if (told.size() < TOLD) {
            told.add(outcome);
        }
    }

    void remark(List<String> more) {
        remarks.addAll(more);
    }

    boolean isEmpty() {
        return counts.isEmpty();
    }

    List<String> remarks() {
        return remarks;
    }

    Map<String, Integer> counts() {
        Map<String, Integer> words = new LinkedHashMap<>();
        for (Outcome.Becomes becomes : Outcome.Becomes.values()) {
            words.put(becomes.word(), counts.getOrDefault(becomes, 0));
        }
        return words;
    }

    /** Refused ones first, then what would change, what is new, what stays. */
    List<Outcome> rows() {
        List<Outcome> all = new ArrayList<>();
        for (Outcome.Becomes becomes : List.of(Outcome.Becomes.REFUSED, Outcome.Becomes.CHANGED, Outcome.Becomes.NEW, Outcome.Becomes.SAME)) {
            all.addAll(rows.getOrDefault(becomes, List.of()));
        }
        return all;
    }
}
