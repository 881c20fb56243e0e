package org.vanewright.bench.web.page;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.platform.plot.DrawnPlot;

/**
 * What a calculator says.
 *
 * @param said what follows from the figures, in words; null where they stand for themselves
 * @param figures the results
 * @param picture a drawing; null for none
 * @param plots curves, each with its table
 * @param table results in rows; null for none
 * @param method how it was computed
 * @param sources citations
 * @param validity warnings; empty inside the method's range
 */
public record Answer(
        @Nullable String said,
        List<Figure> figures,
        @Nullable Picture picture,
        List<DrawnPlot> plots,
        @Nullable Table table,
        String method,
        List<String> sources,
        List<String> validity) {
    /**
     * A drawing.
     *
     * @param svg to stand inside the page
     * @param caption beneath it
     */
    public record Picture(String svg, String caption) {}

    static Answer of(List<Figure> figures, String method, List<String> sources, List<String> validity) {
        return new Answer(null, figures, null, List.of(), null, method, sources, validity);
    }
}
