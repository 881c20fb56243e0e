package org.vanewright.record.provenance;

import org.jspecify.annotations.Nullable;

/**
 * Where some figures of a document come from. Of several that cover a figure, the one with the longest path counts.
 *
 * @param figures path in the document, such as {@code masses}, {@code speeds.vs1Kt} or {@code surfaces[0].panels[1]}; it
 *     covers everything beneath
 * @param origin how they are known
 * @param by who measured, calculated or estimated them
 * @param on the day, as in ISO 8601: {@code 2026-05-17}
 * @param instrument what they were measured with
 * @param citation author, title, year and page
 * @param note the method, and whatever else helps to judge them
 */
public record FigureOrigin(
        @Nullable String figures,
        @Nullable Origin origin,
        @Nullable String by,
        @Nullable String on,
        @Nullable String instrument,
        @Nullable String citation,
        @Nullable String note) {
    /** Whether a figure lies at this path or beneath it. */
    public boolean covers(String path) {
        return figures != null && FigurePaths.isWithin(path, figures);
    }
}
