package org.vanewright.engineering.drawing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.zip.CRC32;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences.PRINT_SCALING;

/** Writes pages at true scale as PDF, the font embedded, and asks the viewer not to scale when printing. */
public final class PdfWriter {
    private static final float POINTS_PER_MM = 72 / 25.4f;

    private PdfWriter() {}

    /** The same specification gives the same bytes, on any machine and day. */
    public static byte[] write(PdfDocumentSpec spec) {
        try (PDDocument document = new PDDocument();
                TrueTypeFont typeface = new TTFParser().parse(new RandomAccessReadBuffer(Lettering.fontFile()))) {
            PDType0Font font = PDType0Font.load(document, typeface, true);
            PDResources resources = new PDResources();
            COSName fontName = resources.add(font);
            CRC32 contentCheck = new CRC32();
            for (PdfPage page : spec.pages()) {
                PdfContent content = new PdfContent(font, fontName.getName());
                for (PdfPage.Part part : page.parts()) {
                    content.part(part);
                }
                byte[] bytes = content.bytes();
                contentCheck.update(bytes);
                addPage(document, page, resources, bytes);
            }
            font.subset();
            describe(document, spec);
            // the library derives the file identifier from this number and the document information
            document.setDocumentId(spec.created().toEpochMilli() * 31 + contentCheck.getValue());
            ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 16);
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("memory only, so nothing outside can fail", e);
        }
    }

    private static void addPage(PDDocument document, PdfPage page, PDResources resources, byte[] content)
            throws IOException {
        PDPage sheet = new PDPage(
                new PDRectangle((float) page.widthMm() * POINTS_PER_MM, (float) page.heightMm() * POINTS_PER_MM));
        sheet.setResources(resources);
        PDStream stream = new PDStream(document);
        try (OutputStream to = stream.createOutputStream(COSName.FLATE_DECODE)) {
            to.write(content);
        }
        sheet.setContents(stream);
        document.addPage(sheet);
    }

    private static void describe(PDDocument document, PdfDocumentSpec spec) {
        PDDocumentInformation information = document.getDocumentInformation();
        information.setTitle(spec.title());
        information.setSubject(spec.subject());
        information.setCreator("Vanewright");
        GregorianCalendar created = GregorianCalendar.from(spec.created().atZone(ZoneOffset.UTC));
        information.setCreationDate(created);
        information.setModificationDate(created);
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setPrintScaling(PRINT_SCALING.None);
        preferences.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(preferences);
        document.getDocumentCatalog().setLanguage("en");
    }
}
