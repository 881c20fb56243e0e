package org.vanewright.engineering.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.vanewright.engineering.solid.DeviceDesign.BaseOutline;
import org.vanewright.engineering.solid.DeviceDesign.EdgeTreatment;
import org.vanewright.engineering.solid.DeviceDesign.Pair;
import org.vanewright.engineering.solid.DeviceDesign.Planform;

/** Random designs over all options; only those the rules accept are kept. */
public final class RandomDesigns {
    private final Random random;
    private int tried;

    public RandomDesigns(long seed) {
        random = new Random(seed);
    }

    int tried() {
        return tried;
    }

    public List<DeviceDesign> valid(int count) {
        List<DeviceDesign> designs = new ArrayList<>();
        while (designs.size() < count) {
            DeviceDesign design = any();
            tried++;
            if (DesignRules.check(design).isEmpty()) {
                designs.add(design);
            }
        }
        return designs;
    }

    private DeviceDesign any() {
        DesignBuilder b = new DesignBuilder();
        b.planform = one(Planform.values());
        b.height = between(2, 20);
        b.length = between(6, 60);
        b.thickness = between(0.6, 2);
        b.tipLength = random.nextBoolean() ? null : Double.valueOf(between(0.3, 1) * b.length);
        b.leading = one(EdgeTreatment.values());
        b.trailing = random.nextInt(3) > 0 ? null : one(EdgeTreatment.values());
        boolean roundable = b.planform == Planform.RECTANGULAR || b.planform == Planform.SWEPT_TRAPEZIUM;
        b.tipRadius = roundable && random.nextBoolean() ? Double.valueOf(between(0.2, 0.6) * b.height) : null;
        b.fillet = random.nextInt(3) == 0 ? null : Double.valueOf(between(0.2, 3));
        b.baseLength = b.length + between(1, 20);
        b.baseWidth = between(8, 40);
        b.baseThickness = between(0.6, 3);
        b.outline = one(BaseOutline.values());
        b.corner = random.nextBoolean() ? null : Double.valueOf(between(0.5, 0.5 * b.baseWidth));
        b.bevel = random.nextBoolean() ? null : Double.valueOf(between(0.1, 1));
        b.underside = one(new Double[] {null, 1.0, -1.0});
        b.underside = b.underside == null ? null : Double.valueOf(b.underside * b.baseLength * between(1, 20));
        b.inset = random.nextInt(3) > 0 ? null : Double.valueOf(between(0, 6));
        b.footWidth = random.nextBoolean() ? null : Double.valueOf(b.thickness + between(0, 4));
        b.footAngle = random.nextBoolean() ? null : Double.valueOf(between(20, 45));
        b.mark = random.nextBoolean();
        b.tolerance = one(new Double[] {null, 0.005, 0.05});
        if (random.nextInt(4) == 0) {
            b.pair = new Pair(between(-25, 25), between(4, 20));
            b.baseWidth = between(20, 50);
            b.footWidth = null;
        }
        return b.build();
    }

    /** Anything within the bounds of the single values, likely or not; most are refused. */
    DeviceDesign extreme() {
        DesignBuilder b = new DesignBuilder();
        b.planform = one(Planform.values());
        b.height = wide(0.5, 60);
        b.length = wide(2, 200);
        b.thickness = wide(0.4, 10);
        b.tipLength = random.nextBoolean() ? null : Double.valueOf(wide(0.4, 200));
        b.leading = one(EdgeTreatment.values());
        b.trailing = one(EdgeTreatment.values());
        b.tipRadius = random.nextBoolean() ? null : Double.valueOf(wide(0.001, 60));
        b.fillet = random.nextBoolean() ? null : Double.valueOf(wide(0.001, 20));
        b.baseLength = wide(2, 250);
        b.baseWidth = wide(2, 150);
        b.baseThickness = wide(0.4, 20);
        b.outline = one(BaseOutline.values());
        b.corner = random.nextBoolean() ? null : Double.valueOf(wide(0.1, 75));
        b.bevel = random.nextBoolean() ? null : Double.valueOf(wide(0.001, 10));
        b.underside = random.nextBoolean() ? null : Double.valueOf(wide(2, 1e6) * (random.nextBoolean() ? 1 : -1));
        b.inset = random.nextBoolean() ? null : Double.valueOf(wide(0.001, 240));
        b.footWidth = random.nextBoolean() ? null : Double.valueOf(wide(0.4, 40));
        b.footAngle = between(15, 60);
        b.mark = random.nextBoolean();
        b.tolerance = wide(0.002, 0.5);
        b.pair = random.nextInt(3) > 0 ? null : new Pair(between(-45, 45), wide(0.5, 148));
        return b.build();
    }

    /** Evenly spread over the orders of magnitude. */
    private double wide(double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private <T> T one(T[] values) {
        return values[random.nextInt(values.length)];
    }
}
