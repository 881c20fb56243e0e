package org.vanewright.adhesive.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.adhesive.AdhesiveDocument;
import org.vanewright.adhesive.AreaStrength;
import org.vanewright.adhesive.Carrier;
import org.vanewright.adhesive.Holding;
import org.vanewright.adhesive.LineStrength;
import org.vanewright.adhesive.PackRating;
import org.vanewright.adhesive.Temperatures;
import org.vanewright.adhesive.TestMethod;
import org.vanewright.engineering.bond.LineLoadUnit;
import org.vanewright.engineering.bond.StressUnit;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.OriginFields;
import org.vanewright.platform.form.PhotographFields;
import org.vanewright.platform.page.UnitSystem;

/**
 * Between an adhesive and its form. Fields are named by the document's own paths; beside each strength stands the unit in
 * which it was typed. A strength that is left empty takes its method with it.
 */
final class AdhesiveForms {
    private AdhesiveForms() {}

    /** Nothing but what most tapes share. */
    static Form blank() {
        return of(new AdhesiveDocument(
                "",
                null,
                Carrier.FOAM,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                false,
                List.of(),
                List.of()));
    }

    static Form of(AdhesiveDocument a) {
        Form form = new Form(UnitSystem.METRIC);
        form.put("name", a.name())
                .put("description", a.description())
                .put("invented", a.invented() ? "true" : "")
                .put("carrier", a.carrier())
                .put("thicknessMm", a.thicknessMm());
        line(form, "peel", a.peel());
        line(form, "cleavage", a.cleavage());
        area(form, "shear", a.shear());
        area(form, "tensile", a.tensile());
        Holding h = a.holding() == null ? new Holding(null, null, null, null) : a.holding();
        form.put("holding.hours", h.hours())
                .put("holding.massG", h.massG())
                .put("holding.areaMm2", h.areaMm2())
                .put("holding.method", h.method())
                .put("modulusKPa", a.modulusKPa());
        temperatures(form, "service", a.service());
        temperatures(form, "application", a.application());
        PackRating pack = a.pack() == null ? new PackRating(null, null) : a.pack();
        form.put("dwellHours", a.dwellHours())
                .put("pack.pounds", pack.pounds())
                .put("pack.words", pack.words())
                .put("practice", a.practice());
        OriginFields.put(form, a);
        PhotographFields.put(form, a);
        return form;
    }

    private static void line(Form form, String path, @Nullable LineStrength given) {
        form.put(path + ".strengthNPerCm", given == null ? (Double) null : given.strengthNPerCm())
                .put(path + ".unit", LineLoadUnit.N_PER_CM)
                .put(path + ".method", given == null ? null : given.method());
    }

    private static void area(Form form, String path, @Nullable AreaStrength given) {
        form.put(path + ".strengthKPa", given == null ? (Double) null : given.strengthKPa())
                .put(path + ".unit", StressUnit.KPA)
                .put(path + ".method", given == null ? null : given.method());
    }

    private static void temperatures(Form form, String path, @Nullable Temperatures given) {
        form.put(path + ".lowestC", given == null ? (Double) null : given.lowestC())
                .put(path + ".highestC", given == null ? (Double) null : given.highestC());
    }

    /** The adhesive as typed; what cannot be read is noted in the form. */
    static AdhesiveDocument read(Form form) {
        String name = form.text("name");
        return new AdhesiveDocument(
                name == null ? "" : name,
                form.text("description"),
                form.choice("carrier", Carrier.class),
                form.number("thicknessMm"),
                line(form, "peel"),
                line(form, "cleavage"),
                area(form, "shear"),
                area(form, "tensile"),
                holding(form),
                form.number("modulusKPa"),
                temperatures(form, "service"),
                temperatures(form, "application"),
                form.number("dwellHours"),
                pack(form),
                form.text("practice"),
                form.checked("invented"),
                OriginFields.read(form),
                PhotographFields.read(form));
    }

    private static @Nullable LineStrength line(Form form, String path) {
        String field = path + ".strengthNPerCm";
        TestMethod method = form.choice(path + ".method", TestMethod.class);
        LineLoadUnit unit = form.choice(path + ".unit", LineLoadUnit.class);
        Double typed = form.number(field);
        if (form.text(field) == null) {
            return null;
        }
        return new LineStrength(typed == null || unit == null ? typed : (Double) unit.toNPerCm(typed), method);
    }

    private static @Nullable AreaStrength area(Form form, String path) {
        String field = path + ".strengthKPa";
        TestMethod method = form.choice(path + ".method", TestMethod.class);
        StressUnit unit = form.choice(path + ".unit", StressUnit.class);
        Double typed = form.number(field);
        if (form.text(field) == null) {
            return null;
        }
        return new AreaStrength(typed == null || unit == null ? typed : (Double) unit.toKPa(typed), method);
    }

    private static @Nullable Holding holding(Form form) {
        Holding typed = new Holding(
                form.number("holding.hours"),
                form.number("holding.massG"),
                form.number("holding.areaMm2"),
                form.choice("holding.method", TestMethod.class));
        boolean empty = form.text("holding.hours") == null
                && form.text("holding.massG") == null
                && form.text("holding.areaMm2") == null;
        return empty ? null : typed;
    }

    private static @Nullable Temperatures temperatures(Form form, String path) {
        Double low = form.number(path + ".lowestC");
        Double high = form.number(path + ".highestC");
        return low == null && high == null ? null : new Temperatures(low, high);
    }

    private static @Nullable PackRating pack(Form form) {
        Double pounds = form.number("pack.pounds");
        String words = form.text("pack.words");
        return pounds == null && words == null ? null : new PackRating(pounds, words);
    }
}
