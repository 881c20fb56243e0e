package org.vanewright.bond;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.vanewright.device.DeviceDocument;
import org.vanewright.record.Revision;

/**
 * The bond of the devices of one row, which are all alike.
 *
 * @param index of the row in its layout
 * @param name of the row
 * @param device exact revision
 * @param count on both wings
 * @param areaMm2 bonded area of one base
 * @param angleDeg of a vane to the local flow, sideslip added
 * @param normalForceCoefficient of a vane at that angle
 * @param air load of the air at the speed asked
 * @param knock load of a knock at the tip
 * @param alongSpeed load of the air at the airframe's speeds and the one asked, slowest first
 * @param knockAsSpeedKt speed at which the air would pull as hard as the knock; no speed to fly
 */
public record RowBond(
        int index,
        String name,
        Revision<DeviceDocument> device,
        int count,
        double areaMm2,
        double angleDeg,
        double normalForceCoefficient,
        BondCase air,
        BondCase knock,
        List<AtSpeed> alongSpeed,
        double knockAsSpeedKt) {
    /**
     * The air at one speed.
     *
     * @param name of the speed, such as Vne
     */
    public record AtSpeed(String name, double speedKt, BondCase air) {}

    /** Where this row gives way first; empty where no strength is stated. */
    public Optional<Weakest> weakest() {
        return Stream.of(air, knock)
                .flatMap(c -> c.weakest().stream())
                .min((a, b) -> Double.compare(a.margin(), b.margin()));
    }

    /** How many times harder the knock pulls than the air. */
    public double knockOverAir() {
        return knock.peakTensionPa() / air.peakTensionPa();
    }
}
