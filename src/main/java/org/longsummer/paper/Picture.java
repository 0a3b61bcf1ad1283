package org.longsummer.paper;

import java.util.List;
import java.util.function.Consumer;

/**
 * A small picture of vectors.
 *
 * @param title what it shows
 * @param alternative the same in words, for those who cannot see it
 * @param width points
 * @param height points
 * @param marks its strokes
 */
public record Picture(String title, String alternative, double width, double height, List<Mark> marks) {
    public Picture {
        marks = List.copyOf(marks);
    }

    static Picture drawn(String title, String alternative, double width, double height, Consumer<Pen> drawing) {
        Mark.Notes notes = new Mark.Notes();
        drawing.accept(notes);
        return new Picture(title, alternative, width, height, notes.marks);
    }

    /** Draws it again with another pen. */
    void with(Pen pen) {
        for (Mark mark : marks) {
            switch (mark.kind()) {
                case "line", "dashed" -> pen.line(mark.x(), mark.y(), mark.x2(), mark.y2(), mark.size(), mark.kind().equals("dashed"));
                case "box" -> pen.box(mark.x(), mark.y(), mark.x2(), mark.y2(), mark.size());
                case "dot", "ring" -> pen.dot(mark.x(), mark.y(), mark.x2(), mark.kind().equals("dot"));
                default -> pen.text(mark.x(), mark.y(), Pen.Anchor.valueOf(mark.anchor().toUpperCase(java.util.Locale.ROOT)), mark.size(), mark.said());
            }
        }
    }
}
