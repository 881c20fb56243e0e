package org.vanewright.review;

import java.util.List;
import java.util.stream.Collectors;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.record.RecordContent;
import org.vanewright.record.check.CheckResult;
import org.vanewright.record.check.TextChecks;
import org.vanewright.record.check.TextFinding;
import org.vanewright.record.provenance.FigureGroup;
import org.vanewright.record.provenance.FigureOrigins;

/** The checks that every kind of record passes through. */
final class GeneralChecks {
    static final String RULES = "Rules of its kind";
    static final String TEXTS = "Contact data in texts";
    static final String ORIGINS = "Origins of figures";

    private GeneralChecks() {}

    static CheckResult rules(List<FieldProblem> problems) {
        return problems.isEmpty()
                ? CheckResult.passed(RULES, "Every field is there and the geometry can be computed with.")
                : CheckResult.failed(
                        RULES,
                        problems.stream()
                                .map(p -> p.field() + " must be " + p.allowed())
                                .collect(Collectors.joining("; ")));
    }

    /** Whether a text holds an e-mail address or a phone number, which may be there by accident. */
    static CheckResult texts(RecordContent content) {
        List<TextFinding> found = content instanceof Record document ? TextChecks.of(document) : List.of();
        return found.isEmpty()
                ? CheckResult.passed(TEXTS, "No text looks like an e-mail address or a phone number.")
                : CheckResult.noticed(
                        TEXTS,
                        "May be there by accident: "
                                + found.stream()
                                        .map(f -> f.kind().label() + " in " + f.field() + " (" + f.excerpt() + ")")
                                        .collect(Collectors.joining("; "))
                                + ".");
    }

    /** How many of the figures say how they are known. */
    static CheckResult origins(RecordContent content) {
        FigureOrigins origins = content.figureOrigins();
        List<FigureGroup> all = origins.topGroups();
        List<FigureGroup> without = origins.notStated();
        if (without.isEmpty()) {
            return CheckResult.passed(
                    ORIGINS, "Every group of figures states how it is known: " + all.size() + " in all.");
        }
        long stated = all.stream().filter(origins::isStated).count();
        return CheckResult.noticed(
                ORIGINS,
                stated + " of " + all.size() + " groups of figures state how they are known; not stated: "
                        + without.stream().map(FigureGroup::words).collect(Collectors.joining(", ")) + ".");
    }
}
