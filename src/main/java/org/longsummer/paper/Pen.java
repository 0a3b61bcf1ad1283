package org.longsummer.paper;

/** Draws in points, y downwards, in black and greys: what a picture is made of, on a page and on paper. */
public interface Pen {
    /** Where a text stands to its point. */
    enum Anchor { START, MIDDLE, END }

    void line(double x1, double y1, double x2, double y2, double width, boolean dashed);

    /** @param shade 0 black to 1 white */
    void box(double x, double y, double width, double height, double shade);

    void dot(double x, double y, double radius, boolean filled);

    void text(double x, double y, Anchor anchor, double size, String text);
}
