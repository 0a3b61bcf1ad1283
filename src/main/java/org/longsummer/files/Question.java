package org.longsummer.files;

import java.util.List;
import java.util.Set;

/**
 * What a file leaves open, to be asked and not guessed.
 *
 * @param key under which the answer is given
 * @param words the question
 * @param example a text of the file that can be read in several ways; empty when there is none
 * @param row its row as a spreadsheet counts it; 0 for none
 * @param column its column, as the file calls it; empty for none
 * @param choices the ways; none when the question is which column is what
 */
public record Question(String key, String words, String example, long row, String column, List<Choice> choices) {
    public static final String KIND = "kind";
    public static final String TEXT = "text";
    public static final String DECIMAL = "decimal";
    public static final String DATES = "dates";
    public static final String ZONE = "zone";
    public static final String COLUMNS = "columns";
    /** Before the name of a column, to say of it alone what it is. */
    public static final String COLUMN = "column ";
    /** What is worth remembering for the next file with the same header. */
    static final Set<String> REMEMBERED = Set.of(KIND, TEXT, DECIMAL, DATES, ZONE);

    public Question {
        choices = List.copyOf(choices);
    }

    /**
     * One way to read it.
     *
     * @param value the answer
     * @param words what it means
     * @param reading what the example then says; empty when there is none
     */
    public record Choice(String value, String words, String reading) {}

    /** In one paragraph, for a command line. */
    public String text() {
        StringBuilder text = new StringBuilder(words);
        if (!example.isEmpty()) {
            text.append(" Row ").append(row).append(", ").append(column).append(": \"").append(example).append("\".");
        }
        for (Choice choice : choices) {
            text.append("\n  ").append(key).append('=').append(choice.value()).append("  ").append(choice.words());
            text.append(choice.reading().isEmpty() ? "" : ": " + choice.reading());
        }
        return text.toString();
    }
}
