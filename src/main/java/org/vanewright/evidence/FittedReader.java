package org.vanewright.evidence;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutService;
import org.vanewright.layout.RowDocument;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.study.RowProportion;
import org.vanewright.study.StudyCondition;
import org.vanewright.study.StudyQuery;
import org.vanewright.study.StudyService;

/** Reads from a layout where its devices stand. */
@Component
class FittedReader {
    private static final StudyQuery AT_STALL =
            new StudyQuery(null, null, null, StudyCondition.STALL, null, null, StudyQuery.Trial.NONE);

    private final LayoutService layouts;
    private final StudyService studies;

    FittedReader(LayoutService layouts, StudyService studies) {
        this.layouts = layouts;
        this.studies = studies;
    }

    @Nullable
    Fitted of(RevisionRef ref) {
        return layouts.find(ref).filter(Revision::isPublic).map(this::of).orElse(null);
    }

    private @Nullable Fitted of(Revision<LayoutDocument> layout) {
        try {
            return principal(studies.proportions(layout, AT_STALL));
        } catch (InvalidInputException e) {
            // An airframe without a stalling speed or a mass; where its devices stand is known all the same.
            return asWritten(layout.content().rows());
        }
    }

    private static @Nullable Fitted principal(List<RowProportion> rows) {
        RowProportion most = null;
        for (RowProportion row : rows) {
            if (most == null || row.vanes() > most.vanes()) {
                most = row;
            }
        }
        return most == null
                ? null
                : new Fitted(
                        most.row(),
                        most.surface(),
                        most.side(),
                        most.chordFraction(),
                        most.heightMm(),
                        most.proportions().heightToThickness(),
                        rows.size());
    }

    /** Without counting vanes the first row stands for all. */
    private static @Nullable Fitted asWritten(List<RowDocument> rows) {
        if (rows.isEmpty()) {
            return null;
        }
        RowDocument first = rows.get(0);
        return new Fitted(
                text(first.name()),
                text(first.surface()),
                first.side(),
                first.chordFraction(),
                null,
                null,
                rows.size());
    }

    private static String text(@Nullable String given) {
        return given == null ? "" : given;
    }
}
