package org.vanewright.adhesive;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.engineering.bond.StressUnit;
import org.vanewright.record.Revision;
import org.vanewright.record.check.CheckResult;
import org.vanewright.record.check.SubmissionChecks;

/** What a reviewer of an adhesive would look at first. Its bounds are engineering judgement, without a source. */
@Component
class AdhesiveChecks implements SubmissionChecks<AdhesiveDocument> {
    private static final String NO_SOURCE = " (engineering judgement, no source)";
    private static final double STRONGEST_TAPE_KPA = 2_000;
    private static final double STRONGEST_TAPE_N_PER_CM = 80;
    private static final double AS_GOOD_AS_EQUAL = 0.01;

    @Override
    public String kind() {
        return "adhesive";
    }

    @Override
    public List<CheckResult> run(Revision<AdhesiveDocument> revision) {
        AdhesiveDocument adhesive = revision.content();
        return List.of(stated(adhesive), usual(adhesive), pack(adhesive), origins(adhesive));
    }

    private static CheckResult stated(AdhesiveDocument a) {
        List<String> missing = new ArrayList<>();
        note(missing, "peel or cleavage", a.peelNPerCm() == null ? a.cleavageNPerCm() : a.peelNPerCm());
        note(missing, "shear", a.shearKPa());
        note(missing, "tensile", a.tensileKPa());
        return missing.isEmpty()
                ? CheckResult.passed("Strengths", "Peel or cleavage, shear and tensile strength are stated.")
                : CheckResult.noticed(
                        "Strengths",
                        "Not stated: " + String.join(", ", missing) + ". No margin can be worked out there.");
    }

    private static void note(List<String> missing, String name, @Nullable Double strength) {
        if (strength == null) {
            missing.add(name);
        }
    }

    private static CheckResult usual(AdhesiveDocument a) {
        boolean tape = a.carrier() != Carrier.NONE;
        boolean strong = Stream.of(number(a.shearKPa()), number(a.tensileKPa())).anyMatch(s -> s > STRONGEST_TAPE_KPA)
                || number(a.peelNPerCm()) > STRONGEST_TAPE_N_PER_CM;
        String detail = String.format(
                Locale.ROOT,
                "Tapes seldom reach %.0f kPa or %.0f N/cm%s.",
                STRONGEST_TAPE_KPA,
                STRONGEST_TAPE_N_PER_CM,
                NO_SOURCE);
        return tape && strong
                ? CheckResult.noticed("Usual strengths", "Stronger than usual for a tape. " + detail)
                : CheckResult.passed("Usual strengths", detail);
    }

    /** A pack's pounds taken for pounds on a square inch, which they are not. */
    private static CheckResult pack(AdhesiveDocument a) {
        Double pounds = a.pack() == null ? null : a.pack().pounds();
        String name = "Rating on the pack";
        if (pounds == null) {
            return CheckResult.passed(name, "No rating in pounds is recorded.");
        }
        double asPsi = StressUnit.PSI.toKPa(pounds);
        boolean taken = Stream.of(number(a.shearKPa()), number(a.tensileKPa()))
                .anyMatch(s -> Math.abs(s - asPsi) < AS_GOOD_AS_EQUAL * asPsi);
        return taken
                ? CheckResult.noticed(
                        name,
                        String.format(
                                Locale.ROOT,
                                "A strength equals the pack's %.0f pounds on each square inch. A rating in pounds names no"
                                        + " area: is the strength really measured?",
                                pounds))
                : CheckResult.passed(name, "No strength looks like the rating taken for one.");
    }

    private static CheckResult origins(AdhesiveDocument a) {
        int without = a.figureOrigins().notStated().size();
        return without == 0
                ? CheckResult.passed("Origin of the figures", "Every figure says where it comes from.")
                : CheckResult.noticed("Origin of the figures", without + " figures do not say where they come from.");
    }

    private static double number(@Nullable Double given) {
        return given == null ? 0 : given;
    }
}
