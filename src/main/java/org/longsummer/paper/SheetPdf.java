package org.longsummer.paper;

import com.lowagie.text.Document;
import com.lowagie.text.DocumentException;
import com.lowagie.text.Element;
import com.lowagie.text.Font;
import com.lowagie.text.FontFactory;
import com.lowagie.text.Image;
import com.lowagie.text.PageSize;
import com.lowagie.text.Paragraph;
import com.lowagie.text.Phrase;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import com.lowagie.text.pdf.PdfTemplate;
import com.lowagie.text.pdf.PdfWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.longsummer.store.Business;

/** The owner's sheet as a PDF of one page, vectors and text, in black and greys. What does not fit is set smaller. */
public final class SheetPdf {
    private static final Pattern DAY = Pattern.compile("\\b\\d{4}-\\d{2}-\\d{2}\\b");
    private static final DateTimeFormatter WRITTEN = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
    private static final float MARGIN = 42;
    private static final float[] SIZES = {10.5f, 10, 9.5f, 9, 8.5f, 8, 7.5f, 7, 6.5f, 6};
    private static final float PICTURES_APART = 14;
    private static final float LOGO_WIDTH = 120;
    private static final float LOGO_HEIGHT = 50;

    private final OwnersSheet sheet;
    private final Business business;
    private final LocalDate printed;
    private final Rectangle paper;
    private final boolean invented;

    private SheetPdf(OwnersSheet sheet, Business business, LocalDate printed, Rectangle paper, boolean invented) {
        this.sheet = sheet;
        this.business = business;
        this.printed = printed;
        this.paper = paper;
        this.invented = invented;
    }

    /**
     * The bytes of the file.
     *
     * @param business whose paper it is
     * @param printed the day at its foot
     * @param letter on paper of 8.5 by 11 in; else A4
     * @param invented it is of the demo fleet, which it says
     */
    public static byte[] of(OwnersSheet sheet, Business business, LocalDate printed, boolean letter, boolean invented) {
        SheetPdf pdf = new SheetPdf(sheet, business, printed, letter ? PageSize.LETTER : PageSize.A4, invented);
        for (float size : SIZES) {
            Optional<byte[]> fitting = pdf.onOnePage(size, size == SIZES[SIZES.length - 1]);
            if (fitting.isPresent()) {
                return fitting.get();
            }
        }
        throw new IllegalStateException("the smallest size is always taken");
    }

    private Optional<byte[]> onOnePage(float size, boolean takenAnyway) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Document document = new Document(paper, MARGIN, MARGIN, MARGIN, MARGIN)) {
            PdfWriter writer = PdfWriter.getInstance(document, out);
            document.addTitle("Owner's sheet: " + sheet.label());
            document.addCreator("Longsummer");
            document.open();
            fill(document, writer, size);
            if (writer.getPageNumber() > 1 && !takenAnyway) {
                return Optional.empty();
            }
        } catch (DocumentException e) {
            throw new IllegalStateException(e);
        }
        return Optional.of(out.toByteArray());
    }

    private void fill(Document document, PdfWriter writer, float size) {
        head(document, size);
        if (invented) {
            document.add(text("An invented example.", bold(size), 0));
        }
        document.add(text(sheet.label(), bold(size * 1.6f), size * 0.4f));
        document.add(text(sheet.machine(), plain(size), 0));
        document.add(text(sheet.checked(), plain(size), size * 0.3f));
        document.add(text(sheet.sentence(), plain(size * 1.25f), size * 0.6f));
        pictures(document, writer, size);
        for (OwnersSheet.Section section : sheet.sections()) {
            document.add(text(section.title(), bold(size * 1.1f), size * 0.7f));
            section.paragraphs().forEach(paragraph -> document.add(text(paragraph, plain(size), size * 0.2f)));
        }
        if (!sheet.cautions().isEmpty()) {
            document.add(text("Before anybody touches it", bold(size * 1.1f), size * 0.7f));
            sheet.cautions().forEach(caution -> document.add(text("– " + caution, plain(size * 0.95f), size * 0.2f)));
        }
        document.add(text(OwnersSheet.ADVICE_ONLY, bold(size), size));
        document.add(text("Printed on " + printed + ". ± is two standard uncertainties.", plain(size * 0.9f), size * 0.3f));
    }

    private void head(Document document, float size) {
        if (business.equals(Business.UNKNOWN)) {
            return;
        }
        PdfPTable table = new PdfPTable(new float[] {3, 1});
        table.setWidthPercentage(100);
        PdfPCell words = bare();
        words.addElement(new Paragraph(business.name(), bold(size)));
        business.address().lines().forEach(line -> words.addElement(new Paragraph(line, plain(size * 0.95f))));
        if (!business.telephone().isEmpty()) {
            words.addElement(new Paragraph("Telephone " + business.telephone(), plain(size * 0.95f)));
        }
        if (!business.licenceNumber().isEmpty()) {
            words.addElement(new Paragraph("Licence " + business.licenceNumber(), plain(size * 0.95f)));
        }
        PdfPCell logo = bare();
        logo().ifPresent(logo::addElement);
        table.addCell(words);
        table.addCell(logo);
        table.setSpacingAfter(size * 0.6f);
        document.add(table);
    }

    /** A picture that cannot be drawn, such as one in a format of the web, is left out. */
    private Optional<Image> logo() {
        if (business.logo().isEmpty()) {
            return Optional.empty();
        }
        try {
            Image image = Image.getInstance(business.logo().get().bytes());
            image.scaleToFit(LOGO_WIDTH, LOGO_HEIGHT);
            image.setAlignment(Element.ALIGN_RIGHT);
            return Optional.of(image);
        } catch (IOException | DocumentException e) {
            return Optional.empty();
        }
    }

    private void pictures(Document document, PdfWriter writer, float size) {
        List<Picture> pictures = java.util.stream.Stream.of(sheet.readings(), sheet.seasons()).flatMap(Optional::stream).toList();
        if (pictures.isEmpty()) {
            return;
        }
        PdfPTable table = new PdfPTable(pictures.size());
        table.setWidthPercentage(100);
        table.setSpacingBefore(size * 0.8f);
        for (Picture picture : pictures) {
            PdfPCell cell = bare();
            cell.setPaddingRight(PICTURES_APART);
            cell.addElement(new Paragraph(picture.title(), bold(size)));
            cell.addElement(drawn(picture, writer));
            table.addCell(cell);
        }
        document.add(table);
    }

    private static Image drawn(Picture picture, PdfWriter writer) {
        PdfTemplate template = writer.getDirectContent().createTemplate((float) picture.width(), (float) picture.height());
        picture.with(new PdfPen(template, picture.height()));
        try {
            Image image = Image.getInstance(template);
            image.setAlt(picture.alternative());
            return image;
        } catch (DocumentException e) {
            throw new IllegalStateException(e);
        }
    }

    private static PdfPCell bare() {
        PdfPCell cell = new PdfPCell(new Phrase(""));
        cell.setBorder(Rectangle.NO_BORDER);
        cell.setPadding(0);
        return cell;
    }

    private static Paragraph text(String text, Font font, float before) {
        Paragraph paragraph = new Paragraph(DAY.matcher(text).replaceAll(SheetPdf::written), font);
        paragraph.setLeading(font.getSize() * 1.3f);
        paragraph.setSpacingBefore(before);
        return paragraph;
    }

    private static String written(MatchResult day) {
        return LocalDate.parse(day.group()).format(WRITTEN);
    }

    private static Font plain(float size) {
        return FontFactory.getFont(FontFactory.HELVETICA, size);
    }

    private static Font bold(float size) {
        return FontFactory.getFont(FontFactory.HELVETICA_BOLD, size);
    }
}
