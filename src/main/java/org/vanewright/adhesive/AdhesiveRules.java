package org.vanewright.adhesive;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.record.photograph.PhotographRules;
import org.vanewright.record.provenance.ProvenanceRules;

/**
 * What must hold of an adhesive: a name, what carries it, how thick it is, and figures within bounds that no tape or glue
 * leaves. A strength that nobody knows stays away.
 */
public final class AdhesiveRules {
    private static final double COLDEST_C = -100;
    private static final double HOTTEST_C = 350;

    private AdhesiveRules() {}

    public static List<FieldProblem> check(AdhesiveDocument adhesive) {
        Checks checks = new Checks();
        checks.text("name", adhesive.name(), 120);
        checks.optionalText("description", adhesive.description(), 4_000);
        checks.optionalText("practice", adhesive.practice(), 4_000);
        checks.present("carrier", adhesive.carrier(), "FOAM, FILM, GEL or NONE");
        checks.range("thicknessMm", adhesive.thicknessMm(), 0.01, 6, "mm");
        checkLine("peel", adhesive.peel(), Property.PEEL, 200, checks);
        checkLine("cleavage", adhesive.cleavage(), Property.CLEAVAGE, 2_000, checks);
        checkArea("shear", adhesive.shear(), Property.SHEAR, checks);
        checkArea("tensile", adhesive.tensile(), Property.TENSILE, checks);
        checkHolding(adhesive.holding(), checks);
        checks.optionalRange("modulusKPa", adhesive.modulusKPa(), 1, 20_000_000, "kPa");
        checkTemperatures("service", adhesive.service(), checks);
        checkTemperatures("application", adhesive.application(), checks);
        checks.optionalRange("dwellHours", adhesive.dwellHours(), 0, 2_000, "h");
        checkPack(adhesive.pack(), checks);
        ProvenanceRules.check(adhesive, adhesive.provenance()).forEach(checks::add);
        PhotographRules.check(adhesive.photographs()).forEach(checks::add);
        return checks.problems();
    }

    private static void checkLine(
            String path, @Nullable LineStrength given, Property property, double mostNPerCm, Checks checks) {
        if (given != null) {
            checks.range(path + ".strengthNPerCm", given.strengthNPerCm(), 0.01, mostNPerCm, "N/cm");
            checkMethod(path, given.method(), property, checks);
        }
    }

    private static void checkArea(String path, @Nullable AreaStrength given, Property property, Checks checks) {
        if (given != null) {
            checks.range(path + ".strengthKPa", given.strengthKPa(), 1, 100_000, "kPa");
            checkMethod(path, given.method(), property, checks);
        }
    }

    private static void checkMethod(String path, @Nullable TestMethod method, Property property, Checks checks) {
        checks.require(
                method != null && method.measures(property),
                path + ".method",
                method,
                "a method that measures " + property.words() + ": " + TestMethod.namesOf(property));
    }

    private static void checkHolding(@Nullable Holding holding, Checks checks) {
        if (holding != null) {
            checks.range("holding.hours", holding.hours(), 0, 100_000, "h");
            checks.range("holding.massG", holding.massG(), 1, 20_000, "g");
            checks.range("holding.areaMm2", holding.areaMm2(), 1, 100_000, "mm²");
            checkMethod("holding", holding.method(), Property.HOLDING, checks);
        }
    }

    private static void checkTemperatures(String path, @Nullable Temperatures range, Checks checks) {
        if (range == null) {
            return;
        }
        Double low = range.lowestC();
        Double high = range.highestC();
        boolean lowFine = checks.optionalRange(path + ".lowestC", low, COLDEST_C, HOTTEST_C, "°C");
        boolean highFine = checks.optionalRange(path + ".highestC", high, COLDEST_C, HOTTEST_C, "°C");
        if (lowFine && highFine && low != null && high != null) {
            checks.require(low < high, path + ".highestC", high, "more than the lowest temperature");
        }
    }

    private static void checkPack(@Nullable PackRating pack, Checks checks) {
        if (pack != null) {
            checks.optionalRange("pack.pounds", pack.pounds(), 0.1, 2_000, "lb");
            checks.optionalText("pack.words", pack.words(), 300);
            checks.require(pack.pounds() != null || pack.words() != null, "pack.pounds", null, "what the pack says");
        }
    }
}
