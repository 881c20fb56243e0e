package org.vanewright.layout;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.template.Register;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.photograph.PhotographRules;
import org.vanewright.record.provenance.ProvenanceRules;

/** What must hold of a layout by itself, before its airframe and devices are looked up. */
public final class LayoutRules {
    /** Rows of one layout. */
    public static final int MAX_ROWS = 20;

    private static final double MAX_STATION_MM = 30_000;

    private LayoutRules() {}

    public static List<FieldProblem> check(LayoutDocument layout) {
        Checks checks = new Checks();
        checks.text("name", layout.name(), 120);
        checks.optionalText("description", layout.description(), 4_000);
        checkRef("airframe", layout.airframe(), checks);
        List<RowDocument> rows = layout.rows();
        int count = rows == null ? 0 : rows.size();
        if (checks.require(count >= 1 && count <= MAX_ROWS, "rows", count, "1 to " + MAX_ROWS + " rows")) {
            for (int i = 0; i < count; i++) {
                checks.addUnder("rows[" + i + "]", checkRow(rows.get(i)));
            }
        }
        ProvenanceRules.check(layout, layout.provenance()).forEach(checks::add);
        PhotographRules.check(layout.photographs()).forEach(checks::add);
        return checks.problems();
    }

    private static List<FieldProblem> checkRow(@Nullable RowDocument row) {
        Checks checks = new Checks();
        if (row == null) {
            checks.add(new FieldProblem("", "missing", "a row"));
            return checks.problems();
        }
        checks.text("name", row.name(), 80);
        checkRef("device", row.device(), checks);
        checks.text("surface", row.surface(), 80);
        checks.present("side", row.side(), "UPPER or LOWER");
        checks.range("fromMm", row.fromMm(), 0, MAX_STATION_MM, "mm");
        checks.range("toMm", row.toMm(), 0, MAX_STATION_MM, "mm");
        checkPosition(row, checks);
        checks.present("arrangement", row.arrangement(), "CO_ROTATING, COMMON_FLOW_DOWN or COMMON_FLOW_UP");
        checks.optionalRange("angleDeg", row.angleDeg(), -45, 45, "°");
        checks.range("pitchMm", row.pitchMm(), 1, 5_000, "mm");
        checks.optionalRange("pairGapMm", row.pairGapMm(), 0, 5_000, "mm");
        checkRegister(row, checks);
        return checks.problems();
    }

    private static void checkPosition(RowDocument row, Checks checks) {
        if (row.chordFraction() != null && row.arcDistanceMm() != null) {
            checks.add(new FieldProblem(
                    "arcDistanceMm",
                    row.arcDistanceMm().toString(),
                    "absent when chordFraction is given: a row has one position"));
        } else if (row.arcDistanceMm() != null) {
            checks.range("arcDistanceMm", row.arcDistanceMm(), 0, 10_000, "mm");
        } else {
            checks.range("chordFraction", row.chordFraction(), 0, 1, "");
        }
    }

    private static void checkRegister(RowDocument row, Checks checks) {
        if (row.register() == Register.SPAR_LINE) {
            checks.range("registerChordFraction", row.registerChordFraction(), 0.02, 0.98, "");
        } else {
            checks.optionalRange("registerChordFraction", row.registerChordFraction(), 0, 1, "");
        }
    }

    private static void checkRef(String field, @Nullable RevisionRef ref, Checks checks) {
        boolean ok = ref != null && ref.slug() != null && !ref.slug().isBlank() && ref.revision() >= 1;
        String given = ref == null ? null : ref.slug() + ", revision " + ref.revision();
        checks.require(ok, field, given, "a record and its revision, such as {\"slug\":\"…\",\"revision\":1}");
    }
}
