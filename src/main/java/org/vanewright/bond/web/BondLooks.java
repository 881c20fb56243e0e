package org.vanewright.bond.web;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.vanewright.bond.BondAssumption;
import org.vanewright.bond.BondCase;
import org.vanewright.bond.BondConditions;
import org.vanewright.bond.BondWay;
import org.vanewright.bond.LayoutBond;
import org.vanewright.bond.RowBond;
import org.vanewright.bond.Weakest;
import org.vanewright.engineering.bond.BondMode;
import org.vanewright.platform.plot.DrawnPlot;

/** The bond of a layout as its page shows it. */
final class BondLooks {
    private static final char SPACE = '\u00a0';

    private BondLooks() {}

    /**
     * A row.
     *
     * @param bond what was worked out
     * @param said where it gives way first, in a sentence
     * @param knockSaid what a knock is beside the air
     * @param bends whether its base bends, in a sentence
     * @param lines of the table of margins
     * @param speeds of the table over speed
     * @param plot over speed; null where no strength is stated
     */
    public record Row(
            RowBond bond,
            String said,
            String knockSaid,
            String bends,
            List<Line> lines,
            List<SpeedLine> speeds,
            @Nullable DrawnPlot plot) {}

    /** One load, one way, with what is asked and the margin of each mode. */
    public record Line(
            String load, String way, String force, String shear, String tension, String edge, List<Cell> margins) {}

    /** A margin, and whether it falls short. */
    public record Cell(String text, boolean small) {}

    /** The air at one speed. */
    public record SpeedLine(String name, String speed, String force, String mode, Cell margin) {}

    static Row row(RowBond row, LayoutBond bond) {
        List<Line> lines = new ArrayList<>();
        for (BondCase load : List.of(row.air(), row.knock())) {
            load.ways().forEach(way -> lines.add(line(load, way)));
        }
        return new Row(
                row,
                row.weakest()
                        .map(w -> "Gives way first: " + w.words() + ".")
                        .orElse("No strength of this adhesive is stated, so there is nothing to compare with."),
                knock(row, bond.conditions()),
                bends(row),
                lines,
                row.alongSpeed().stream().map(BondLooks::speed).toList(),
                BondPlots.of(row, bond));
    }

    private static Line line(BondCase load, BondWay way) {
        return new Line(
                load.kind() == BondCase.Kind.AIR ? "Air" : "Knock",
                way.direction().words(),
                digits(load.forceN(), 2) + SPACE + "N",
                digits(way.stress().shearPa() / 1000, 2) + SPACE + "kPa",
                digits(way.stress().peakTensionPa() / 1000, 2) + SPACE + "kPa",
                digits(way.stress().cleavageNPerCm(), 2) + SPACE + "N/cm",
                List.of(
                        cell(way.margins().of(BondMode.SHEAR)),
                        cell(way.margins().of(BondMode.TENSION)),
                        cell(way.margins().of(BondMode.CLEAVAGE))));
    }

    private static SpeedLine speed(RowBond.AtSpeed at) {
        Weakest weakest = at.air().weakest().orElse(null);
        return new SpeedLine(
                at.name(),
                digits(at.speedKt(), 3) + SPACE + "kt",
                digits(at.air().forceN(), 2) + SPACE + "N",
                weakest == null
                        ? "–"
                        : weakest.mode().label() + ", " + weakest.direction().words(),
                cell(weakest == null ? null : (Double) weakest.margin()));
    }

    private static Cell cell(@Nullable Double margin) {
        return margin == null ? new Cell("not stated", false) : new Cell(digits(margin, 2), margin < 1);
    }

    private static String knock(RowBond row, BondConditions conditions) {
        double ratio = row.knockOverAir();
        String knock = digits(conditions.knockN(), 2) + SPACE + "N at the tip";
        return ratio >= 1
                ? String.format(
                        Locale.ROOT,
                        "A knock of %s pulls %s times as hard as the air at %s kt. The air would have to come at about %s kt to"
                                + " do the same, which nobody flies.",
                        knock,
                        digits(ratio, 2),
                        digits(conditions.speedKt(), 3),
                        digits(row.knockAsSpeedKt(), 2))
                : String.format(
                        Locale.ROOT,
                        "Here the air at %s kt pulls harder than a knock of %s.",
                        digits(conditions.speedKt(), 3),
                        knock);
    }

    private static String bends(RowBond row) {
        BondWay across = row.air().ways().get(0);
        Double beta = across.betaAcross();
        return across.bends()
                ? "Sideways the base bends on this tape (β b is " + digits(beta == null ? 0 : beta, 2)
                        + "): the tension gathers near the vane. The larger of the rigid figure and"
                        + " that of a beam on an elastic foundation counts."
                : "The base is stiff on this tape (β b is " + digits(beta == null ? 0 : beta, 2)
                        + "): the rigid formula holds.";
    }

    /** What was calculated with, by field. */
    static Map<String, String> values(BondConditions c) {
        Map<String, String> values = new LinkedHashMap<>();
        values.put("speedKt", digits(c.speedKt(), 4));
        values.put(BondAssumption.LOAD_FACTOR.field(), digits(c.loadFactor(), 4));
        values.put(BondAssumption.SPEED_RATIO.field(), digits(c.speedRatio(), 4));
        values.put(BondAssumption.SIDESLIP_DEG.field(), digits(c.sideslipDeg(), 4));
        values.put(BondAssumption.KNOCK_N.field(), digits(c.knockN(), 4));
        values.put(
                BondAssumption.TEMPERATURE_FACTOR.field(), digits(c.knockDown().temperature(), 4));
        values.put(BondAssumption.AGEING_FACTOR.field(), digits(c.knockDown().ageing(), 4));
        values.put(BondAssumption.SURFACE_FACTOR.field(), digits(c.knockDown().surface(), 4));
        values.put(BondAssumption.BASE_MODULUS_MPA.field(), digits(c.baseModulusMPa(), 6));
        values.put(BondAssumption.TAPE_MODULUS_KPA.field(), digits(c.tapeModulusKPa(), 6));
        return values;
    }

    /** So many significant digits, without an exponent. */
    static String digits(double value, int significant) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(significant, RoundingMode.HALF_UP));
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
