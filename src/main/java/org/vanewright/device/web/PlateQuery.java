package org.vanewright.device.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.solid.BuildPlate;
import org.vanewright.engineering.solid.Mesh;
import org.vanewright.engineering.solid.Plate;
import org.vanewright.platform.form.Form;

/**
 * How many pieces on which bed.
 *
 * @param plate which plate of those needed, from 1
 */
record PlateQuery(double bedWidthMm, double bedDepthMm, int count, double spacingMm, int plate) {
    /** A common size of bed. */
    static final double BED_MM = 220;

    /** Batches of 8 to 16 are common practice, no source. */
    static final int COUNT = 12;

    static final double SPACING_MM = 4;

    private static final int MOST_PLATES = 500;

    /** Reads the parameters; what cannot be used is noted in the query's form. */
    static PlateQuery of(FileQuery query) {
        Form form = query.form();
        Integer count = form.integer("count");
        Integer plate = form.integer("plate");
        // a whole number too large for one is out of range, not missing
        whole(form, "count", count);
        whole(form, "plate", plate);
        PlateQuery asked = new PlateQuery(
                or(form.number("bedWidthMm"), BED_MM),
                or(form.number("bedDepthMm"), BED_MM),
                count == null ? COUNT : count,
                or(form.number("spacingMm"), SPACING_MM),
                plate == null ? 1 : plate);
        Checks checks = new Checks();
        checks.range("bedWidthMm", asked.bedWidthMm, 50, 1000, "mm");
        checks.range("bedDepthMm", asked.bedDepthMm, 50, 1000, "mm");
        checks.require(asked.count >= 1 && asked.count <= 500, "count", asked.count, "1 to 500 pieces");
        checks.range("spacingMm", asked.spacingMm, 1, 50, "mm");
        checks.require(asked.plate >= 1 && asked.plate <= MOST_PLATES, "plate", asked.plate, "1 to " + MOST_PLATES);
        form.refuse(checks.problems());
        return asked;
    }

    private static void whole(Form form, String field, @Nullable Integer read) {
        if (read == null && form.text(field) != null && form.error(field) == null) {
            form.refuse(new FieldProblem(field, form.value(field), "a whole number from 1 to 500"));
        }
    }

    List<Plate> plates(Mesh mesh) {
        return BuildPlate.arrange(mesh, bedWidthMm, bedDepthMm, count, spacingMm);
    }

    /** @throws InvalidInputException where the bed is too small, or there are not so many plates */
    Plate plate(Mesh mesh) {
        List<Plate> plates = plates(mesh);
        Checks checks = new Checks();
        checks.require(plate <= plates.size(), "plate", plate, "a whole number from 1 to " + plates.size());
        checks.throwIfAny();
        return plates.get(plate - 1);
    }

    private static double or(@Nullable Double given, double otherwise) {
        return given == null ? otherwise : given;
    }
}
