package org.vanewright.record.provenance;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;

/** What must be said with each origin, so that a reader can judge the figure. */
public final class ProvenanceRules {
    /** Entries of one document. */
    public static final int MOST = 60;

    private static final LocalDate EARLIEST = LocalDate.of(1903, 1, 1);
    private static final LocalDate LATEST = LocalDate.of(2199, 12, 31);

    private ProvenanceRules() {}

    /** Every problem of a document's statements, under {@code provenance}. */
    public static List<FieldProblem> check(Record document, List<FigureOrigin> provenance) {
        Checks checks = new Checks();
        if (!checks.require(
                provenance.size() <= MOST, "provenance", provenance.size(), "at most " + MOST + " entries")) {
            return checks.problems();
        }
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < provenance.size(); i++) {
            FigureOrigin stated = provenance.get(i);
            Checks entry = new Checks();
            checkFigures(entry, document, stated.figures(), seen);
            checkOrigin(entry, stated);
            checks.addUnder("provenance[" + i + "]", entry.problems());
        }
        return checks.problems();
    }

    private static void checkFigures(Checks checks, Record document, @Nullable String figures, Set<String> seen) {
        boolean exists = figures != null && FigurePaths.exists(document, figures);
        if (checks.require(exists, "figures", figures, "figures that this record has")) {
            checks.require(
                    figures != null && seen.add(figures), "figures", figures, "figures that no other entry names");
        }
    }

    private static void checkOrigin(Checks checks, FigureOrigin stated) {
        Origin origin = stated.origin();
        checks.present("origin", origin, "how the figures are known");
        line(checks, "by", stated.by(), 120, origin == Origin.MEASURED, "who measured");
        checkDay(checks, stated.on(), origin == Origin.MEASURED);
        line(checks, "instrument", stated.instrument(), 200, origin == Origin.MEASURED, "what it was measured with");
        line(checks, "citation", stated.citation(), 500, origin == Origin.LITERATURE, "author, title, year and page");
        if (origin == Origin.CALCULATED) {
            checks.require(stated.note() != null && !stated.note().isBlank(), "note", stated.note(), "the method");
        }
        checks.optionalText("note", stated.note(), 1_000);
    }

    private static void line(
            Checks checks, String field, @Nullable String text, int longest, boolean needed, String what) {
        if (text != null && !text.isEmpty()) {
            checks.text(field, text, longest);
        } else {
            checks.require(!needed, field, null, what);
        }
    }

    private static void checkDay(Checks checks, @Nullable String day, boolean needed) {
        if (day == null || day.isEmpty()) {
            checks.require(!needed, "on", null, "the day, such as 2026-05-17");
            return;
        }
        boolean ok = false;
        try {
            LocalDate read = LocalDate.parse(day);
            ok = day.length() == 10 && !read.isBefore(EARLIEST) && !read.isAfter(LATEST);
        } catch (DateTimeException e) {
            ok = false;
        }
        checks.require(ok, "on", day, "a day such as 2026-05-17");
    }
}
