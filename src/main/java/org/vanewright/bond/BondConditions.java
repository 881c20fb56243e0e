package org.vanewright.bond;

import org.jspecify.annotations.Nullable;
import org.vanewright.adhesive.AdhesiveDocument;
import org.vanewright.adhesive.Carrier;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.engineering.bond.KnockDown;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * What a bond is asked to bear, with nothing left open.
 *
 * @param speedKt equivalent airspeed
 * @param neverExceedKt of the airframe; null where it states none
 * @param loadFactor on the force of the air
 * @param speedRatio local speed over airspeed
 * @param sideslipDeg added to the angle of each vane
 * @param knockN at the tip
 * @param knockDown on strengths
 * @param baseModulusMPa of the print
 * @param tapeModulusKPa of the tape
 */
public record BondConditions(
        double speedKt,
        @Nullable Double neverExceedKt,
        double loadFactor,
        double speedRatio,
        double sideslipDeg,
        double knockN,
        KnockDown knockDown,
        double baseModulusMPa,
        double tapeModulusKPa) {

    /** @throws InvalidInputException naming each field that is out of range, or the speed where nobody states one */
    static BondConditions of(BondQuery query, AirframeDocument airframe, AdhesiveDocument adhesive) {
        Double vne = airframe.speeds() == null ? null : airframe.speeds().vneKt();
        Checks checks = new Checks();
        Double speed = query.speedKt() == null ? vne : query.speedKt();
        checks.range("speedKt", speed, 10, 600, "kt");
        BondConditions conditions = new BondConditions(
                speed == null ? 0 : speed,
                vne,
                value(BondAssumption.LOAD_FACTOR, query.loadFactor(), checks),
                value(BondAssumption.SPEED_RATIO, query.speedRatio(), checks),
                value(BondAssumption.SIDESLIP_DEG, query.sideslipDeg(), checks),
                value(BondAssumption.KNOCK_N, query.knockN(), checks),
                new KnockDown(
                        value(BondAssumption.TEMPERATURE_FACTOR, query.temperatureFactor(), checks),
                        value(BondAssumption.AGEING_FACTOR, query.ageingFactor(), checks),
                        value(BondAssumption.SURFACE_FACTOR, query.surfaceFactor(), checks)),
                value(BondAssumption.BASE_MODULUS_MPA, query.baseModulusMPa(), checks),
                tape(query.tapeModulusKPa(), adhesive, checks));
        checks.throwIfAny();
        return conditions;
    }

    private static double value(BondAssumption assumption, @Nullable Double asked, Checks checks) {
        checks.optionalRange(assumption.field(), asked, assumption.least(), assumption.most(), assumption.unit());
        return asked == null ? assumption.usual() : asked;
    }

    private static double tape(@Nullable Double asked, AdhesiveDocument adhesive, Checks checks) {
        Double own = adhesive.modulusKPa();
        Carrier carrier = adhesive.carrier() == null ? Carrier.FOAM : adhesive.carrier();
        return asked == null && own == null
                ? carrier.usualModulusKPa()
                : value(BondAssumption.TAPE_MODULUS_KPA, asked == null ? own : asked, checks);
    }

    /** The same at another speed. */
    BondConditions at(double otherKt) {
        return new BondConditions(
                otherKt,
                neverExceedKt,
                loadFactor,
                speedRatio,
                sideslipDeg,
                knockN,
                knockDown,
                baseModulusMPa,
                tapeModulusKPa);
    }

    /** Whether the speed is beyond what the aircraft may fly. */
    public boolean beyondNeverExceed() {
        return neverExceedKt != null && speedKt > neverExceedKt;
    }
}
