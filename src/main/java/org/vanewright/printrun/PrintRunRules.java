package org.vanewright.printrun;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.record.photograph.PhotographRules;
import org.vanewright.record.provenance.ProvenanceRules;

/** What must hold of a print run by itself, before its device and layout are looked up. */
public final class PrintRunRules {
    public static final int MAX_SETTINGS = 40;
    public static final int MAX_SAMPLE = 60;
    private static final int MAX_PIECES = 2000;

    private PrintRunRules() {}

    public static List<FieldProblem> check(PrintRunDocument run) {
        Checks checks = new Checks();
        checks.text("name", run.name(), 120);
        checks.optionalText("description", run.description(), 4_000);
        checks.present("device", run.device(), "the device that was printed");
        PrintingDocument printing = run.printing();
        checks.day("printing.on", printing.on());
        checks.present("printing.material", printing.material(), "a class of material");
        checks.text("printing.machineClass", printing.machineClass(), 120);
        settings(run.settings(), checks);
        outcome(run.outcome(), checks);
        sample(run.sample(), checks);
        ProvenanceRules.check(run, run.provenance()).forEach(checks::add);
        PhotographRules.check(run.photographs()).forEach(checks::add);
        return checks.problems();
    }

    private static void settings(List<SettingDocument> settings, Checks checks) {
        checks.require(
                settings.size() <= MAX_SETTINGS,
                "settings",
                settings.size(),
                "at most " + MAX_SETTINGS + " settings");
        for (int i = 0; i < settings.size(); i++) {
            checks.text("settings[" + i + "].name", settings.get(i).name(), 80);
            checks.text("settings[" + i + "].value", settings.get(i).value(), 120);
        }
    }

    private static void outcome(OutcomeDocument outcome, Checks checks) {
        Integer pieces = outcome.pieces();
        boolean counted = checks.require(
                pieces != null && pieces >= 1 && pieces <= MAX_PIECES,
                "outcome.pieces",
                pieces,
                "a whole number from 1 to " + MAX_PIECES);
        checks.optionalRange("outcome.minutes", outcome.minutes(), 1, 60_000, "minutes");
        checks.optionalRange("outcome.materialG", outcome.materialG(), 0.1, 100_000, "g");
        checks.optionalRange("outcome.energyKWh", outcome.energyKWh(), 0.001, 1000, "kWh");
        checks.optionalRange("outcome.toleranceMm", outcome.toleranceMm(), 0.01, 5, "mm");
        defects(outcome.defects(), checks);
        if (counted && pieces != null) {
            checks.require(
                    outcome.faulty() <= pieces,
                    "outcome.defects",
                    outcome.faulty(),
                    "no more faulty pieces than were printed: a piece counts once, under its worst fault");
        }
    }

    private static void defects(List<DefectDocument> defects, Checks checks) {
        Set<DefectKind> seen = EnumSet.noneOf(DefectKind.class);
        for (int i = 0; i < defects.size(); i++) {
            DefectKind kind = defects.get(i).kind();
            Integer count = defects.get(i).count();
            String at = "outcome.defects[" + i + "]";
            checks.require(
                    kind != null && seen.add(kind), at + ".kind", kind, "a kind of fault that no other line counts");
            checks.require(
                    count != null && count >= 0 && count <= MAX_PIECES,
                    at + ".count",
                    count,
                    "a whole number from 0 to " + MAX_PIECES);
        }
    }

    private static void sample(List<SampleDocument> sample, Checks checks) {
        checks.require(
                sample.size() <= MAX_SAMPLE, "sample", sample.size(), "at most " + MAX_SAMPLE + " measured pieces");
        for (int i = 0; i < sample.size(); i++) {
            checks.range("sample[" + i + "].heightMm", sample.get(i).heightMm(), 0.5, 200, "mm");
            checks.optionalRange("sample[" + i + "].thicknessMm", sample.get(i).thicknessMm(), 0.1, 50, "mm");
        }
    }
}
