package org.longsummer.paper;

import com.lowagie.text.Element;
import com.lowagie.text.FontFactory;
import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.PdfTemplate;

/** Draws on a part of a PDF's page, whose y runs upwards. */
final class PdfPen implements Pen {
    private static final float DASH = 3;
    private final PdfTemplate on;
    private final double height;
    private final BaseFont font = FontFactory.getFont(FontFactory.HELVETICA, 8).getCalculatedBaseFont(false);

    PdfPen(PdfTemplate on, double height) {
        this.on = on;
        this.height = height;
    }

    private float up(double y) {
        return (float) (height - y);
    }

    @Override
    public void line(double x1, double y1, double x2, double y2, double width, boolean dashed) {
        on.saveState();
        on.setLineWidth((float) width);
        if (dashed) {
            on.setLineDash(DASH, DASH, 0);
        }
        on.moveTo((float) x1, up(y1));
        on.lineTo((float) x2, up(y2));
        on.stroke();
        on.restoreState();
    }

    @Override
    public void box(double x, double y, double width, double tall, double shade) {
        on.saveState();
        on.setGrayFill((float) shade);
        on.rectangle((float) x, up(y + tall), (float) width, (float) tall);
        on.fill();
        on.restoreState();
    }

    @Override
    public void dot(double x, double y, double radius, boolean filled) {
        on.saveState();
        on.setLineWidth(1);
        on.setGrayFill(filled ? 0 : 1);
        on.circle((float) x, up(y), (float) radius);
        on.fillStroke();
        on.restoreState();
    }

    @Override
    public void text(double x, double y, Anchor anchor, double size, String text) {
        int alignment = switch (anchor) {
            case START -> Element.ALIGN_LEFT;
            case MIDDLE -> Element.ALIGN_CENTER;
            case END -> Element.ALIGN_RIGHT;
        };
        on.beginText();
        on.setFontAndSize(font, (float) size);
        on.showTextAligned(alignment, text, (float) x, up(y), 0);
        on.endText();
    }
}
