package org.vanewright.layout.web;

import static org.vanewright.platform.page.Quantity.LENGTH;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.vanewright.device.DeviceDocument;
import org.vanewright.engineering.placement.Arrangement;
import org.vanewright.engineering.placement.ConflictPolicy;
import org.vanewright.engineering.placement.WingChoice;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.solid.DeviceDesign;
import org.vanewright.engineering.template.Register;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.RowDocument;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.OriginFields;
import org.vanewright.platform.form.PhotographFields;
import org.vanewright.platform.form.RevisionField;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** Between a layout and its form. Fields are named by the document's own paths. */
final class LayoutForms {
    private static final RevisionRef NONE = new RevisionRef("", 0);

    private LayoutForms() {}

    /** A form with one row of that device, to start from. */
    static Form blank(UnitSystem units, String airframe, Optional<Revision<DeviceDocument>> device) {
        Form form = new Form(units);
        form.put("airframe", airframe);
        addRow(form);
        form.put("rows[0].device", device.map(r -> RevisionField.value(r.ref())).orElse(""));
        device.map(r -> r.content().pair()).ifPresent(pair -> putPair(form, pair));
        return form;
    }

    /** A pair on one base brings its own angle. */
    private static void putPair(Form form, DeviceDesign.Pair pair) {
        if (pair.angleDeg() != null) {
            form.put("rows[0].arrangement", Arrangement.ofPair(pair.angleDeg())).put("rows[0].angleDeg", (Object) "");
        }
    }

    /** A further row, like the one before it, or one of usual proportions (common practice, no source). */
    static void addRow(Form form) {
        int index = form.size("rows");
        String at = "rows[" + index + "]";
        if (index > 0) {
            form.copy("rows[" + (index - 1) + "]", at);
            form.put(at + ".name", "Row " + (index + 1))
                    .put(at + ".fromMm", (Object) "")
                    .put(at + ".toMm", (Object) "");
            return;
        }
        form.put(at + ".name", "Row 1")
                .put(at + ".side", SurfaceSide.UPPER)
                .put(at + ".chordFraction", 0.08)
                .put(at + ".arrangement", Arrangement.CO_ROTATING)
                .put(at + ".angleDeg", 15.0)
                .put(at + ".pitchMm", LENGTH, 60.0)
                .put(at + ".wings", WingChoice.BOTH_MIRRORED)
                .put(at + ".onConflict", ConflictPolicy.MOVE)
                .put(at + ".register", Register.LEADING_EDGE);
    }

    static Form of(LayoutDocument layout, UnitSystem units) {
        Form form = new Form(units);
        form.put("name", layout.name())
                .put("description", layout.description())
                .put("invented", layout.invented() ? "true" : "")
                .put("airframe", RevisionField.value(layout.airframe()));
        List<RowDocument> rows = layout.rows() == null ? List.of() : layout.rows();
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i) != null) {
                putRow(form, "rows[" + i + "]", rows.get(i));
            }
        }
        OriginFields.put(form, layout);
        PhotographFields.put(form, layout);
        return form;
    }

    private static void putRow(Form form, String at, RowDocument row) {
        form.put(at + ".name", row.name())
                .put(at + ".device", RevisionField.value(row.device()))
                .put(at + ".surface", row.surface())
                .put(at + ".side", row.side())
                .put(at + ".fromMm", LENGTH, row.fromMm())
                .put(at + ".toMm", LENGTH, row.toMm())
                .put(at + ".chordFraction", row.chordFraction())
                .put(at + ".arcDistanceMm", LENGTH, row.arcDistanceMm())
                .put(at + ".arrangement", row.arrangement())
                .put(at + ".angleDeg", row.angleDeg())
                .put(at + ".pitchMm", LENGTH, row.pitchMm())
                .put(at + ".pairGapMm", LENGTH, row.pairGapMm())
                .put(at + ".wings", row.wings())
                .put(at + ".onConflict", row.onConflict())
                .put(at + ".register", row.register())
                .put(at + ".registerChordFraction", row.registerChordFraction());
    }

    /** The layout as typed; what cannot be read is noted in the form. */
    static LayoutDocument read(Form form) {
        List<RowDocument> rows = new ArrayList<>();
        for (int i = 0; i < form.size("rows"); i++) {
            rows.add(readRow(form, "rows[" + i + "]"));
        }
        String name = form.text("name");
        RevisionRef airframe = RevisionField.read(form, "airframe");
        return new LayoutDocument(
                name == null ? "" : name,
                form.text("description"),
                airframe == null ? NONE : airframe,
                rows,
                form.checked("invented"),
                OriginFields.read(form),
                PhotographFields.read(form));
    }

    private static RowDocument readRow(Form form, String at) {
        return new RowDocument(
                form.text(at + ".name"),
                RevisionField.read(form, at + ".device"),
                form.text(at + ".surface"),
                form.choice(at + ".side", SurfaceSide.class),
                form.number(at + ".fromMm", LENGTH),
                form.number(at + ".toMm", LENGTH),
                form.number(at + ".chordFraction"),
                form.number(at + ".arcDistanceMm", LENGTH),
                form.choice(at + ".arrangement", Arrangement.class),
                form.number(at + ".angleDeg"),
                form.number(at + ".pitchMm", LENGTH),
                form.number(at + ".pairGapMm", LENGTH),
                form.choice(at + ".wings", WingChoice.class),
                form.choice(at + ".onConflict", ConflictPolicy.class),
                form.choice(at + ".register", Register.class),
                form.number(at + ".registerChordFraction"));
    }
}
