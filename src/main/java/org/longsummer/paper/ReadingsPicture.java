package org.longsummer.paper;

import java.util.ArrayList;
import java.util.List;
import org.longsummer.wire.JudgedView;

/** What was expected of a sound unit in that weather, as a grey band, and what was read, as a dot: split and amps of one visit. */
final class ReadingsPicture {
    private static final double WIDTH = 250;
    private static final double ROW = 46;
    private static final double LEFT = 8;
    private static final double RIGHT = 242;

    private ReadingsPicture() {}

    static Picture of(JudgedView split, JudgedView amps) {
        List<String> names = new ArrayList<>();
        List<JudgedView> rows = new ArrayList<>();
        add(names, rows, "Split", split);
        add(names, rows, "Amps", amps);
        String said = rows.isEmpty() ? "Nothing could be compared." : words(names, rows);
        return Picture.drawn("Expected and read", said, WIDTH, Math.max(1, rows.size()) * ROW + 16, pen -> {
            for (int i = 0; i < rows.size(); i++) {
                row(pen, i * ROW, names.get(i), rows.get(i));
            }
            if (rows.isEmpty()) {
                pen.text(LEFT, 24, Pen.Anchor.START, 9, said);
            } else {
                pen.text(LEFT, rows.size() * ROW + 10, Pen.Anchor.START, 8, "grey: expected, ± two standard uncertainties; dot: read");
            }
        });
    }

    private static void add(List<String> names, List<JudgedView> rows, String name, JudgedView judged) {
        if (judged.measured().isPresent() && judged.expected().isPresent() && judged.expanded().isPresent()) {
            names.add(name);
            rows.add(judged);
        }
    }

    private static String words(List<String> names, List<JudgedView> rows) {
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < rows.size(); i++) {
            words.append(i == 0 ? "" : " ").append(names.get(i)).append(": ").append(rows.get(i).text()).append('.');
        }
        return words.toString();
    }

    private static void row(Pen pen, double top, String name, JudgedView judged) {
        double expected = judged.expected().orElseThrow().number();
        double expanded = judged.expanded().orElseThrow().number();
        double read = judged.measured().orElseThrow().number();
        double half = 1.25 * Math.max(Math.abs(read - expected), 1.6 * expanded);
        double scale = (RIGHT - LEFT) / (2 * half);
        double middle = (LEFT + RIGHT) / 2;
        pen.text(LEFT, top + 10, Pen.Anchor.START, 9, name + ": " + judged.text());
        pen.box(middle - expanded * scale, top + 16, 2 * expanded * scale, 18, 0.8);
        pen.line(middle, top + 16, middle, top + 34, 1.5, false);
        pen.line(LEFT, top + 34, RIGHT, top + 34, 0.5, false);
        pen.dot(middle + (read - expected) * scale, top + 25, 4.5, true);
    }
}
