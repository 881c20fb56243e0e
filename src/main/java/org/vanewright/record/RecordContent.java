package org.vanewright.record;

import java.util.List;
import java.util.function.UnaryOperator;
import org.vanewright.record.photograph.PhotographUse;
import org.vanewright.record.provenance.FigureGroup;
import org.vanewright.record.provenance.FigureOrigin;
import org.vanewright.record.provenance.FigureOrigins;

/** What a revision says: a feature's document, written to canonical JSON as it stands. */
public interface RecordContent {
    /** What people call it; the slug is made from the first revision's name. */
    String name();

    /** True for demonstration data, which every page marks as invented. */
    boolean invented();

    /** Where its figures come from, as far as it says. */
    default List<FigureOrigin> provenance() {
        return List.of();
    }

    /** The figures it has, by the names people use; a group comes before its parts. */
    default List<FigureGroup> figureGroups() {
        return List.of();
    }

    /** Its statements about its figures, to ask about one of them. */
    default FigureOrigins figureOrigins() {
        return new FigureOrigins(provenance(), figureGroups());
    }

    /** Other records that it builds on. */
    default List<RecordUse> uses() {
        return List.of();
    }

    /**
     * The same document naming other records in their place. One that names records says how.
     *
     * @param to what to name instead of each
     */
    default RecordContent relocated(UnaryOperator<RecordUse> to) {
        if (!uses().isEmpty()) {
            throw new UnsupportedOperationException("documents of this kind do not move between instances");
        }
        return this;
    }

    /** The photographs it shows. */
    default List<PhotographUse> photographs() {
        return List.of();
    }
}
