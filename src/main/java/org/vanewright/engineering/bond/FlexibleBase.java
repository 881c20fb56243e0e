package org.vanewright.engineering.bond;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Stress under a base that bends: a beam with free ends across the base on the tape as its foundation, turned by each vane
 * at its foot ({@link FreeBeam}). k = E_tape L/t and E I_b = E L t_b³/12 with L the edge. The peak tension is the
 * foundation's largest pull; the line load is that pull integrated over the stretch around it, up to where it changes sign.
 * The vane itself, its fillet and a thickened foot stiffen the base and are left out, on the safe side. Of several vanes,
 * all together and each alone are looked at, and the worst counts. A pull is shared evenly.
 *
 * @param betaAcross β b; the rigid formula holds up to about {@value RigidBase#STIFF_ENOUGH}
 * @param stress under the base
 */
public record FlexibleBase(double betaAcross, BondStress stress) {
    private static final int STEPS = 800;

    /** As far from a vane, in 1/λ, as its tension reaches before it turns to pressure, and more. */
    private static final double NEAR = 6;

    /** Whether the rigid formula holds. */
    public boolean isStiff() {
        return betaAcross <= RigidBase.STIFF_ENOUGH;
    }

    /**
     * @param base with a tape that has a thickness
     * @param loads one for each place of a vane, in their order; of either sign
     * @throws InvalidInputException for a tape without thickness, on which nothing bends
     */
    public static FlexibleBase under(TapedBase base, BaseBending bending, List<BondLoad> loads) {
        if (!(base.tapeThicknessMm() > 0)) {
            throw new InvalidInputException(
                    new FieldProblem("tapeThicknessMm", "0", "more than 0 mm, to know how far the tape gives"));
        }
        FreeBeam beam = beam(base, bending);
        List<FreeBeam.Deflection> parts = new ArrayList<>();
        double moment = 0;
        double force = 0;
        double pull = 0;
        for (int i = 0; i < loads.size(); i++) {
            double turning = base.momentNm(loads.get(i));
            parts.add(beam.under(bending.placesMm().get(i) * 1e-3, turning, 0));
            moment += turning;
            force += loads.get(i).forceN();
            pull += loads.get(i).pullN();
        }
        double area = base.areaM2();
        double pressurePerM = bending.tapeModulusPa() / (base.tapeThicknessMm() * 1e-3);
        double[] places = places(base.acrossM(), beam.lambda(), bending.placesMm());
        // one vane may relieve the other, so each is looked at alone, too; and the load may come from either side
        Peak peak = Peak.NONE;
        for (List<FreeBeam.Deflection> acting : acting(parts)) {
            double[] stress = Arrays.stream(places)
                    .map(x -> pressurePerM
                            * acting.stream().mapToDouble(p -> p.at(x)).sum())
                    .toArray();
            peak = Peak.larger(peak, Peak.larger(Peak.of(places, stress, 1), Peak.of(places, stress, -1)));
        }
        double evenly = pull / area;
        return new FlexibleBase(
                beam.lambda() * base.acrossM(),
                new BondStress(
                        moment,
                        force / area,
                        peak.stressPa() + evenly,
                        peak.lineNPerM() + evenly * base.acrossM() / 4));
    }

    private static List<List<FreeBeam.Deflection>> acting(List<FreeBeam.Deflection> parts) {
        List<List<FreeBeam.Deflection>> acting = new ArrayList<>();
        acting.add(parts);
        if (parts.size() > 1) {
            parts.forEach(part -> acting.add(List.of(part)));
        }
        return acting;
    }

    /** Where the stress is looked at: evenly, and closely beside each vane. */
    private static double[] places(double acrossM, double lambda, List<Double> vanesMm) {
        NavigableSet<Double> places = new TreeSet<>();
        for (int i = 0; i <= STEPS; i++) {
            places.add(acrossM * i / STEPS);
        }
        for (double vane : vanesMm) {
            for (int i = -STEPS / 2; i <= STEPS / 2; i++) {
                places.add(Math.min(acrossM, Math.max(0, vane * 1e-3 + NEAR / lambda * 2 * i / STEPS)));
            }
        }
        return places.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static FreeBeam beam(TapedBase base, BaseBending bending) {
        double thickness = bending.thicknessMm() * 1e-3;
        double stiffness = bending.modulusPa() * base.edgeM() * thickness * thickness * thickness / 12;
        double foundation = bending.tapeModulusPa() * base.edgeM() / (base.tapeThicknessMm() * 1e-3);
        return new FreeBeam(base.acrossM(), stiffness, foundation);
    }

    /**
     * The highest stress, and the stress integrated over the stretch of the same sign around it.
     *
     * @param stressPa highest
     * @param lineNPerM for each metre of edge
     */
    private record Peak(double stressPa, double lineNPerM) {
        static final Peak NONE = new Peak(0, 0);

        static Peak of(double[] places, double[] stress, int sign) {
            int top = 0;
            for (int i = 1; i < stress.length; i++) {
                if (sign * stress[i] > sign * stress[top]) {
                    top = i;
                }
            }
            double line = 0;
            for (int i = top; i > 0 && sign * stress[i - 1] > 0; i--) {
                line += sign * (stress[i] + stress[i - 1]) / 2 * (places[i] - places[i - 1]);
            }
            for (int i = top; i < stress.length - 1 && sign * stress[i + 1] > 0; i++) {
                line += sign * (stress[i] + stress[i + 1]) / 2 * (places[i + 1] - places[i]);
            }
            return new Peak(Math.max(0, sign * stress[top]), line);
        }

        /** The higher stress and the higher line load, which need not be of the same place. */
        static Peak larger(Peak a, Peak b) {
            return new Peak(Math.max(a.stressPa(), b.stressPa()), Math.max(a.lineNPerM(), b.lineNPerM()));
        }
    }
}
