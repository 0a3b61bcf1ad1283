package org.longsummer.store;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.longsummer.chain.visit.Work;

/** Works as a text: their words with {@code +} between, as in files. Plans and advice of earlier versions have spaces there. */
final class WorksColumn {
    private WorksColumn() {}

    static String text(Collection<Work> works) {
        return works.stream().map(work -> Column.word(work, null)).collect(Collectors.joining("+"));
    }

    static List<Work> works(String words) {
        return Arrays.stream(words.split("[+ ]")).filter(word -> !word.isEmpty()).map(word -> Work.valueOf(word.toUpperCase(Locale.ROOT))).toList();
    }
}
