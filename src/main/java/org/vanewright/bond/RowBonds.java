package org.vanewright.bond;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.vanewright.adhesive.AdhesiveDocument;
import org.vanewright.device.DeviceDocument;
import org.vanewright.engineering.bond.BaseBending;
import org.vanewright.engineering.bond.BaseFootprint;
import org.vanewright.engineering.bond.BondLoad;
import org.vanewright.engineering.bond.BondStrength;
import org.vanewright.engineering.bond.BondStress;
import org.vanewright.engineering.bond.FlexibleBase;
import org.vanewright.engineering.bond.RigidBase;
import org.vanewright.engineering.bond.TapedBase;
import org.vanewright.engineering.solid.DesignRules;
import org.vanewright.engineering.solid.DeviceDesign;
import org.vanewright.engineering.solid.DeviceDesign.Pair;
import org.vanewright.engineering.solid.DeviceDrawing;
import org.vanewright.engineering.solid.VaneSide;
import org.vanewright.engineering.vane.SideLoad;

/** Loads on one device and the stress in its bond. */
final class RowBonds {
    private final BondConditions conditions;
    private final BondStrength strength;
    private final double tapeMm;
    private final VaneSide vane;
    private final double baseMm;
    private final double angleDeg;
    private final BaseFootprint footprint;
    private final List<Double> vanePlacesMm;

    /** @param rowAngleDeg of the row; a device that holds a pair brings its own */
    RowBonds(DeviceDocument device, double rowAngleDeg, AdhesiveDocument adhesive, BondConditions conditions) {
        DeviceDesign design = DesignRules.withDefaults(device.design());
        Pair pair = design.pair();
        this.conditions = conditions;
        Double edge = adhesive.cleavageNPerCm() == null ? adhesive.peelNPerCm() : adhesive.cleavageNPerCm();
        this.strength = new BondStrength(edge, adhesive.shearKPa(), adhesive.tensileKPa());
        this.tapeMm = number(adhesive.thicknessMm());
        this.vane = VaneSide.of(Objects.requireNonNull(design.vane()));
        this.baseMm = number(Objects.requireNonNull(design.base()).thicknessMm());
        this.angleDeg = Math.abs(pair == null ? rowAngleDeg : number(pair.angleDeg())) + conditions.sideslipDeg();
        this.footprint = new BaseFootprint(DeviceDrawing.baseOutline(design));
        this.vanePlacesMm = places(number(design.base().widthMm()), pair);
    }

    private static List<Double> places(double widthMm, @Nullable Pair pair) {
        return pair == null
                ? List.of(widthMm / 2)
                : List.of((widthMm - number(pair.gapMm())) / 2, (widthMm + number(pair.gapMm())) / 2);
    }

    double areaMm2() {
        return footprint.areaMm2();
    }

    double angleDeg() {
        return angleDeg;
    }

    SideLoad side(double speedKt) {
        double pressure = BondLoad.dynamicPressurePa(speedKt * conditions.speedRatio());
        return SideLoad.of(vane.heightMm(), vane.areaMm2(), vane.centroidMm(), Math.toRadians(angleDeg), pressure);
    }

    /** Every vane of the device pushed the same way. */
    BondCase air(double speedKt) {
        SideLoad side = side(speedKt);
        BondLoad each =
                BondLoad.of(side.forceN(), baseMm + side.forceHeightMm()).times(conditions.loadFactor());
        return bondCase(BondCase.Kind.AIR, Collections.nCopies(vanePlacesMm.size(), each));
    }

    /** The tip of one vane knocked, the outer one of a pair. */
    BondCase knock() {
        List<BondLoad> loads =
                new ArrayList<>(Collections.nCopies(vanePlacesMm.size(), BondLoad.of(0, baseMm + vane.heightMm())));
        loads.set(0, BondLoad.of(conditions.knockN(), baseMm + vane.heightMm()));
        return bondCase(BondCase.Kind.KNOCK, loads);
    }

    private BondCase bondCase(BondCase.Kind kind, List<BondLoad> loads) {
        BondLoad whole = BondLoad.of(
                loads.stream().mapToDouble(BondLoad::forceN).sum(), loads.get(0).heightMm());
        return new BondCase(kind, whole.forceN(), whole.heightMm(), List.of(across(whole, loads), along(whole)));
    }

    private BondWay across(BondLoad whole, List<BondLoad> loads) {
        TapedBase base = footprint.across(tapeMm);
        BaseBending bending = new BaseBending(
                conditions.baseModulusMPa() * 1e6, baseMm, conditions.tapeModulusKPa() * 1e3, vanePlacesMm);
        FlexibleBase flexible = FlexibleBase.under(base, bending, loads);
        BondStress rigid = RigidBase.under(base, whole);
        BondStress stress = flexible.isStiff() ? rigid : rigid.larger(flexible.stress());
        return way(BondWay.Direction.ACROSS, flexible.betaAcross(), !flexible.isStiff(), stress);
    }

    private BondWay along(BondLoad whole) {
        return way(BondWay.Direction.ALONG, null, false, RigidBase.under(footprint.along(tapeMm), whole));
    }

    private BondWay way(BondWay.Direction direction, @Nullable Double beta, boolean bends, BondStress stress) {
        return new BondWay(direction, beta, bends, stress, strength.over(stress, conditions.knockDown()));
    }

    private static double number(@Nullable Double given) {
        return given == null ? 0 : given;
    }
}
