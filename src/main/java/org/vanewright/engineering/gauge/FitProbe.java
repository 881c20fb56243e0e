package org.vanewright.engineering.gauge;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Lays the shell cut for one station on the wing at another and measures the gap. The shell moves as a rigid body in the
 * plane of the section to where the gaps, squared and summed, are least (Gauss and Newton); then the gap at every sample,
 * along the normal of the true skin, is what counts. Sampled at both faces and at every slot.
 */
final class FitProbe {
    private static final int ROUNDS = 4;
    private static final int NEAREST_ROUNDS = 3;
    private static final double[] BEHIND = {
        0, 1.0 / 128, 1.0 / 64, 1.0 / 32, 1.0 / 16, 1.0 / 8, 1.0 / 4, 3.0 / 8, 1.0 / 2, 5.0 / 8, 3.0 / 4, 7.0 / 8, 1
    };
    private static final double[] WRAPPED = {1, 3.0 / 4, 1.0 / 2, 1.0 / 4, 1.0 / 8, 1.0 / 24};

    private final GaugeFrame frame;
    private final int panel;
    private final double cutForMm;
    private final double stationMm;
    private final List<Slot> slots;
    private final List<Sample> samples = new ArrayList<>();
    private final NosePoint pivot;
    private final double shiftX;
    private final double shiftZ;

    /** A place of the shell's skin line and the outline it lies on. */
    private record Sample(NosePoint shell, NoseCurve skin, double s, boolean slot, double wantedS) {}

    /** Where a moved place of the shell lies over the skin. */
    private record Gap(double mm, double s, NosePoint skin) {}

    private FitProbe(GaugeFrame frame, int panel, double cutForMm, List<Slot> slots, double stationMm) {
        this.frame = frame;
        this.panel = panel;
        this.cutForMm = cutForMm;
        this.stationMm = stationMm;
        this.slots = slots;
        pivot = frame.curve(panel, cutForMm).at(0);
        NosePoint there = frame.curve(panel, stationMm).at(0);
        shiftX = there.x() - pivot.x();
        shiftZ = there.z() - pivot.z();
        double rear = frame.rearMm(slots);
        plane(-frame.inboardMm(), rear, null);
        plane(frame.outboardMm(), rear, null);
        slots.forEach(slot -> plane(slot.offsetMm(), rear, slot));
    }

    /** @param slots of the shell cut for {@code cutForMm} */
    static Fit of(GaugeFrame frame, int panel, double cutForMm, List<Slot> slots, double stationMm) {
        return cutForMm == stationMm ? Fit.EXACT : new FitProbe(frame, panel, cutForMm, slots, stationMm).fit();
    }

    private void plane(double v, double rearMm, @Nullable Slot slot) {
        NoseCurve cut = frame.curve(panel, cutForMm + v);
        NoseCurve here = frame.curve(panel, stationMm + v);
        for (double share : WRAPPED) {
            double s = -share * frame.settings().wrapMm();
            samples.add(new Sample(cut.at(s), here, s, false, s));
        }
        for (double share : BEHIND) {
            samples.add(new Sample(cut.at(share * rearMm), here, share * rearMm, false, 0));
        }
        if (slot != null) {
            double wanted = frame.arcMm(panel, stationMm + v);
            samples.add(new Sample(cut.at(slot.arcMm()), here, slot.arcMm(), true, wanted));
        }
    }

    private Fit fit() {
        double[] motion = {0, 0, 0};
        for (int round = 0; round < ROUNDS; round++) {
            double[] step = step(motion);
            for (int k = 0; k < 3; k++) {
                motion[k] += step[k];
            }
        }
        double open = 0;
        double press = 0;
        double place = 0;
        for (Sample sample : samples) {
            Gap gap = gap(sample, motion);
            open = Math.max(open, gap.mm());
            press = Math.max(press, -gap.mm());
            if (sample.slot()) {
                place = Math.max(place, Math.abs(gap.s() - sample.wantedS()));
            }
        }
        return new Fit(open, press, place, motion[0], motion[1], motion[2]);
    }

    /** Least-squares correction of the motion: three normal equations by Cramer's rule. */
    private double[] step(double[] motion) {
        double[][] a = new double[3][3];
        double[] b = new double[3];
        for (Sample sample : samples) {
            Gap gap = gap(sample, motion);
            NosePoint n = gap.skin();
            double armX = sample.shell().x() - pivot.x();
            double armZ = sample.shell().z() - pivot.z();
            double[] rate = {n.normalX(), n.normalZ(), n.normalZ() * armX - n.normalX() * armZ};
            for (int i = 0; i < 3; i++) {
                b[i] -= rate[i] * gap.mm();
                for (int k = 0; k < 3; k++) {
                    a[i][k] += rate[i] * rate[k];
                }
            }
        }
        return solved(a, b);
    }

    private static double[] solved(double[][] a, double[] b) {
        double whole = determinant(a);
        double[] x = new double[3];
        if (Math.abs(whole) < 1e-9) {
            return x;
        }
        for (int k = 0; k < 3; k++) {
            double[][] swapped = {a[0].clone(), a[1].clone(), a[2].clone()};
            for (int i = 0; i < 3; i++) {
                swapped[i][k] = b[i];
            }
            x[k] = determinant(swapped) / whole;
        }
        return x;
    }

    private static double determinant(double[][] m) {
        return m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1])
                - m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0])
                + m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0]);
    }

    /** The nearest place of the true skin is found by stepping along its tangent. */
    private Gap gap(Sample sample, double[] motion) {
        double armX = sample.shell().x() - pivot.x();
        double armZ = sample.shell().z() - pivot.z();
        double c = Math.cos(motion[2]);
        double t = Math.sin(motion[2]);
        double x = pivot.x() + c * armX - t * armZ + shiftX + motion[0];
        double z = pivot.z() + t * armX + c * armZ + shiftZ + motion[1];
        double s = sample.s();
        NosePoint p = sample.skin().at(s);
        for (int i = 0; i < NEAREST_ROUNDS; i++) {
            double ahead = p.tangentX() * (x - p.x()) + p.tangentZ() * (z - p.z());
            double off = p.normalX() * (x - p.x()) + p.normalZ() * (z - p.z());
            s += ahead / Math.max(0.2, 1 + p.curvaturePerMm() * off);
            p = sample.skin().at(s);
        }
        return new Gap(p.normalX() * (x - p.x()) + p.normalZ() * (z - p.z()), s, p);
    }
}
