package org.vanewright.installation;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.photograph.PhotographRules;
import org.vanewright.record.provenance.ProvenanceRules;

/** What must hold of an installation by itself, before what it names is looked up. */
public final class InstallationRules {
    public static final int MAX_LEFT_OFF = 90;
    public static final int MAX_SAMPLES = 60;

    private InstallationRules() {}

    public static List<FieldProblem> check(InstallationDocument installation) {
        Checks checks = new Checks();
        checks.text("name", installation.name(), 120);
        checks.optionalText("description", installation.description(), 4_000);
        reference("layout", installation.layout(), true, checks);
        adhesive(installation, checks);
        reference("printRun", installation.printRun(), false, checks);
        checks.require(
                installation.printRun() != null || installation.material() != null,
                "material",
                null,
                "the material of the pieces, or a print run that says it");
        checks.day("installedOn", installation.installedOn());
        conditions(installation.conditions(), checks);
        checks.text("doneBy", installation.doneBy(), 80);
        leftOff(installation.leftOff(), checks);
        tolerances(installation.tolerances(), checks);
        samples(installation, checks);
        ProvenanceRules.check(installation, installation.provenance()).forEach(checks::add);
        PhotographRules.check(installation.photographs()).forEach(checks::add);
        return checks.problems();
    }

    private static void adhesive(InstallationDocument installation, Checks checks) {
        reference("adhesive", installation.adhesive(), false, checks);
        String words = installation.adhesiveClass();
        if (words != null) {
            checks.text("adhesiveClass", words, 80);
        } else {
            checks.require(
                    installation.adhesive() != null,
                    "adhesiveClass",
                    null,
                    "what holds the devices, in words, or the record of an adhesive");
        }
    }

    private static void conditions(ConditionsDocument conditions, Checks checks) {
        checks.range("conditions.skinTemperatureC", conditions.skinTemperatureC(), -30, 80, "°C");
        checks.optionalRange("conditions.relativeHumidityPercent", conditions.relativeHumidityPercent(), 0, 100, "%");
        checks.present("conditions.surfaceFinish", conditions.surfaceFinish(), "one of the finishes");
    }

    private static void leftOff(List<DeviceAt> all, Checks checks) {
        checks.require(all.size() <= MAX_LEFT_OFF, "leftOff", all.size(), "at most " + MAX_LEFT_OFF + " devices");
        Set<DeviceAt> seen = new HashSet<>();
        for (int i = 0; i < Math.min(all.size(), MAX_LEFT_OFF); i++) {
            device("leftOff[" + i + "]", all.get(i), seen, checks);
        }
    }

    private static void tolerances(TolerancesDocument tolerances, Checks checks) {
        checks.optionalRange("tolerances.positionMm", tolerances.positionMm(), 0.1, 50, "mm");
        checks.optionalRange("tolerances.angleDeg", tolerances.angleDeg(), 0.1, 20, "°");
        checks.optionalRange("tolerances.heightMm", tolerances.heightMm(), 0.05, 10, "mm");
    }

    private static void samples(InstallationDocument installation, Checks checks) {
        List<SampleDocument> all = installation.samples();
        checks.require(all.size() <= MAX_SAMPLES, "samples", all.size(), "at most " + MAX_SAMPLES + " devices");
        Set<DeviceAt> seen = new HashSet<>(installation.leftOff());
        for (int i = 0; i < Math.min(all.size(), MAX_SAMPLES); i++) {
            SampleDocument each = all.get(i);
            String at = "samples[" + i + "]";
            device(at + ".at", each.at(), seen, checks);
            checks.optionalRange(at + ".chordPositionMm", each.chordPositionMm(), 0, 5_000, "mm");
            checks.optionalRange(at + ".angleDeg", each.angleDeg(), -90, 90, "°");
            checks.optionalRange(at + ".heightMm", each.heightMm(), 0, 100, "mm");
            checks.require(
                    each.chordPositionMm() != null || each.angleDeg() != null || each.heightMm() != null,
                    at + ".chordPositionMm",
                    null,
                    "a figure, or one for the angle or the height");
        }
    }

    private static void device(String field, @Nullable DeviceAt at, Set<DeviceAt> seen, Checks checks) {
        boolean known =
                at != null && !at.key().isEmpty() && DeviceAt.ofKey(at.key()).isPresent();
        if (checks.require(known, field, at == null ? null : at.words(), "a device of the layout")) {
            checks.require(
                    at != null && seen.add(at),
                    field,
                    at == null ? null : at.words(),
                    "a device that is not named before, and was not left off");
        }
    }

    private static void reference(String field, @Nullable RevisionRef ref, boolean needed, Checks checks) {
        boolean ok = ref == null
                ? !needed
                : ref.slug() != null && ref.slug().matches("[a-z0-9-]{1,80}") && ref.revision() >= 1;
        checks.require(
                ok,
                field,
                RevisionRef.words(ref),
                "a record and its revision, such as {\"slug\":\"…\",\"revision\":1}");
    }
}
