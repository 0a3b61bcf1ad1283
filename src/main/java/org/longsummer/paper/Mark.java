package org.longsummer.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * One stroke of a picture, for whoever draws it elsewhere.
 *
 * @param kind line, dashed, box, dot, ring or text
 * @param x from the left, in points
 * @param y from above
 * @param x2 end of a line, width of a box, radius of a dot
 * @param y2 end of a line, height of a box
 * @param size width of a line, shade of a box, size of a text
 * @param said the text; empty when none
 * @param anchor start, middle or end; empty when no text
 */
public record Mark(String kind, double x, double y, double x2, double y2, double size, String said, String anchor) {

    /** Notes strokes instead of drawing them. */
    static final class Notes implements Pen {
        final List<Mark> marks = new ArrayList<>();

        @Override
        public void line(double x1, double y1, double x2, double y2, double width, boolean dashed) {
            marks.add(new Mark(dashed ? "dashed" : "line", x1, y1, x2, y2, width, "", ""));
        }

        @Override
        public void box(double x, double y, double width, double height, double shade) {
            marks.add(new Mark("box", x, y, width, height, shade, "", ""));
        }

        @Override
        public void dot(double x, double y, double radius, boolean filled) {
            marks.add(new Mark(filled ? "dot" : "ring", x, y, radius, 0, 0, "", ""));
        }

        @Override
        public void text(double x, double y, Anchor anchor, double size, String text) {
            marks.add(new Mark("text", x, y, 0, 0, size, text, anchor.name().toLowerCase(Locale.ROOT)));
        }
    }
}
