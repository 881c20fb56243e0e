package org.vanewright.printrun.web;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.vanewright.device.PrintMaterial;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.OriginFields;
import org.vanewright.platform.form.PhotographFields;
import org.vanewright.platform.form.RevisionField;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.printrun.DefectDocument;
import org.vanewright.printrun.DefectKind;
import org.vanewright.printrun.OutcomeDocument;
import org.vanewright.printrun.PrintRunDocument;
import org.vanewright.printrun.PrintingDocument;
import org.vanewright.printrun.SampleDocument;
import org.vanewright.printrun.SettingDocument;

/**
 * Between a print run and its form. Fields are named by the document's own paths; faults stand at the place of their
 * kind, {@code outcome.defects[0].count} for the first kind and so on.
 */
final class PrintRunForms {
    static final String SETTINGS = "settings";
    static final String SAMPLE = "sample";
    static final String DEFECTS = "outcome.defects";

    private static final int MEASURED_TO_START = 5;

    private PrintRunForms() {}

    /** A plate of sixteen to start from: batches of 8 to 16 are common practice, no source. */
    static Form blank(String device, String layout) {
        Form form = new Form(UnitSystem.METRIC);
        form.put("device", device)
                .put("layout", layout)
                .put("outcome.pieces", "16")
                .put("outcome.toleranceMm", "0.3")
                .put(SETTINGS + "[0].name", "Layer height")
                .put(SETTINGS + "[0].value", "")
                .put(SETTINGS + "[1].name", "Walls")
                .put(SETTINGS + "[1].value", "");
        addSample(form);
        return form;
    }

    static void addSetting(Form form) {
        String at = SETTINGS + "[" + form.size(SETTINGS) + "]";
        form.put(at + ".name", "").put(at + ".value", "");
    }

    /** Room for some more measured pieces. */
    static void addSample(Form form) {
        int size = form.size(SAMPLE);
        for (int i = size; i < size + MEASURED_TO_START; i++) {
            form.put(SAMPLE + "[" + i + "].heightMm", "").put(SAMPLE + "[" + i + "].thicknessMm", "");
        }
    }

    static Form of(PrintRunDocument run) {
        Form form = new Form(UnitSystem.METRIC);
        form.put("name", run.name())
                .put("description", run.description())
                .put("invented", run.invented() ? "true" : "")
                .put("device", RevisionField.value(run.device()))
                .put("layout", RevisionField.value(run.layout()))
                .put("printing.on", run.printing().on())
                .put("printing.material", run.printing().material())
                .put("printing.machineClass", run.printing().machineClass());
        for (int i = 0; i < run.settings().size(); i++) {
            form.put(SETTINGS + "[" + i + "].name", run.settings().get(i).name())
                    .put(SETTINGS + "[" + i + "].value", run.settings().get(i).value());
        }
        putOutcome(form, run.outcome());
        for (int i = 0; i < run.sample().size(); i++) {
            form.put(SAMPLE + "[" + i + "].heightMm", run.sample().get(i).heightMm())
                    .put(SAMPLE + "[" + i + "].thicknessMm", run.sample().get(i).thicknessMm());
        }
        OriginFields.put(form, run);
        PhotographFields.put(form, run);
        return form;
    }

    private static void putOutcome(Form form, OutcomeDocument outcome) {
        form.put("outcome.pieces", (Object) outcome.pieces())
                .put("outcome.minutes", outcome.minutes())
                .put("outcome.materialG", outcome.materialG())
                .put("outcome.energyKWh", outcome.energyKWh())
                .put("outcome.toleranceMm", outcome.toleranceMm());
        for (DefectDocument defect : outcome.defects()) {
            if (defect.kind() != null) {
                form.put(DEFECTS + "[" + defect.kind().ordinal() + "].count", (Object) defect.count());
            }
        }
    }

    /** The run as typed; what cannot be read is noted in the form. */
    static PrintRunDocument read(Form form) {
        String name = form.text("name");
        return new PrintRunDocument(
                name == null ? "" : name,
                form.text("description"),
                RevisionField.read(form, "device"),
                RevisionField.read(form, "layout"),
                new PrintingDocument(
                        form.text("printing.on"),
                        form.choice("printing.material", PrintMaterial.class),
                        form.text("printing.machineClass")),
                filled(form, SETTINGS, List.of("name", "value"), at -> setting(form, at)),
                new OutcomeDocument(
                        form.integer("outcome.pieces"),
                        form.number("outcome.minutes"),
                        form.number("outcome.materialG"),
                        form.number("outcome.energyKWh"),
                        form.number("outcome.toleranceMm"),
                        defects(form)),
                filled(form, SAMPLE, List.of("heightMm", "thicknessMm"), at -> sample(form, at)),
                form.checked("invented"),
                OriginFields.read(form),
                PhotographFields.read(form));
    }

    private static SettingDocument setting(Form form, String at) {
        return new SettingDocument(form.text(at + ".name"), form.text(at + ".value"));
    }

    private static SampleDocument sample(Form form, String at) {
        return new SampleDocument(form.number(at + ".heightMm"), form.number(at + ".thicknessMm"));
    }

    /** Every kind up to the last one that was typed, so that a fault's place in the list is that of its field. */
    private static List<DefectDocument> defects(Form form) {
        int last = IntStream.range(0, DefectKind.values().length)
                .filter(i -> form.text(DEFECTS + "[" + i + "].count") != null)
                .max()
                .orElse(-1);
        List<DefectDocument> defects = new ArrayList<>();
        for (int i = 0; i <= last; i++) {
            String at = DEFECTS + "[" + i + "].count";
            defects.add(new DefectDocument(
                    DefectKind.values()[i], form.text(at) == null ? (Integer) 0 : form.integer(at)));
        }
        return defects;
    }

    /** Entries up to the last one with anything in it. */
    private static <T> List<T> filled(Form form, String list, List<String> parts, Function<String, T> read) {
        int size = form.size(list);
        while (size > 0 && isBlank(form, list + "[" + (size - 1) + "]", parts)) {
            size--;
        }
        return IntStream.range(0, size)
                .mapToObj(i -> read.apply(list + "[" + i + "]"))
                .toList();
    }

    private static boolean isBlank(Form form, String at, List<String> parts) {
        return parts.stream().allMatch(part -> form.text(at + "." + part) == null);
    }
}
