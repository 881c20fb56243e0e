package org.vanewright.engineering.drawing;

import java.time.Instant;
import java.util.List;
import org.vanewright.engineering.input.Checks;

/**
 * What goes into a PDF file.
 *
 * @param title shown as the window title
 * @param subject what the document shows, in words
 * @param created recorded as the time of creation; the same specification always gives the same bytes
 * @param pages one or more
 */
public record PdfDocumentSpec(String title, String subject, Instant created, List<PdfPage> pages) {
    public PdfDocumentSpec {
        pages = List.copyOf(pages);
        Checks checks = new Checks();
        checks.require(!pages.isEmpty(), "pages", 0, "at least one page");
        checks.throwIfAny();
    }
}
