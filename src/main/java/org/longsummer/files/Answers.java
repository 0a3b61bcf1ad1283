package org.longsummer.files;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How somebody says that a file is to be read.
 *
 * @param said answers by the keys of questions
 * @param columns for each column of the file in its order what it is, empty for what is to be left out; absent when nobody said so
 */
public record Answers(Map<String, String> said, Optional<List<String>> columns) {
    /** Nothing was said yet. */
    public static final Answers NONE = new Answers(Map.of(), Optional.empty());

    public Answers {
        said = Map.copyOf(said);
        columns = columns.map(List::copyOf);
    }

    Optional<String> to(String key) {
        return Optional.ofNullable(said.get(key)).filter(answer -> !answer.isBlank());
    }

    /** These, and the other ones where these say nothing. */
    public Answers or(Answers other) {
        Map<String, String> both = new LinkedHashMap<>(other.said);
        both.putAll(said);
        return new Answers(both, columns.or(other::columns));
    }

    /** The same with one answer more. */
    public Answers with(String key, String answer) {
        return new Answers(Map.of(key, answer), Optional.empty()).or(this);
    }
}
