package org.vanewright.retention;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.inference.survival.Span;
import org.vanewright.engineering.placement.Hand;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.inspection.InspectionDocument;
import org.vanewright.inspection.Inspections;
import org.vanewright.inspection.LossCause;
import org.vanewright.inspection.LossDocument;
import org.vanewright.installation.DeviceAt;
import org.vanewright.installation.FittedDevice;
import org.vanewright.installation.Installations;
import org.vanewright.layout.StationRow;
import org.vanewright.record.RecordState;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.Standing;

/** A loss lies between two inspections, and nobody knows where. */
class WatchTest {
    private static final DeviceAt FIRST = Installations.at(Wing.LEFT, 1);
    private static final DeviceAt SECOND = Installations.at(Wing.LEFT, 2);
    private static final List<FittedDevice> FITTED = List.of(fitted(FIRST), fitted(SECOND));

    private static FittedDevice fitted(DeviceAt at) {
        int number = at.device() == null ? 0 : at.device();
        StationRow station = new StationRow(
                "Wing",
                Wing.LEFT,
                number,
                1,
                "Row",
                SurfaceSide.UPPER,
                1,
                900,
                1200,
                0.09,
                188,
                -16,
                Hand.TOE_IN,
                null,
                false);
        return new FittedDevice(at, station, 10.0);
    }

    private static Revision<InspectionDocument> at(double hours, LossDocument... losses) {
        Instant when = Instant.parse("2026-05-09T00:00:00Z");
        return new Revision<>(
                "look-" + Math.round(10 * hours),
                1,
                RecordState.PUBLISHED,
                Inspections.inspection("Look", new RevisionRef("pairs", 1), "2026-05-09", hours, losses),
                "0".repeat(64),
                "Club",
                when,
                null,
                new Standing(null, null, null, null, when, "Club", null, null, null));
    }

    private static LossDocument lost(DeviceAt at) {
        return Inspections.lost(at, LossCause.HEAT);
    }

    @Test
    void aLossLiesBetweenTheInspectionsRoundIt() {
        List<WatchedDevice> devices = Watch.devices(FITTED, List.of(at(10), at(25, lost(FIRST)), at(50)));
        assertThat(devices.get(0).span()).isEqualTo(new Span(10, 25));
        assertThat(devices.get(0).found()).isNotNull();
        assertThat(devices.get(1).span()).isEqualTo(Span.kept(50));
        assertThat(devices.get(1).found()).isNull();
    }

    @Test
    void whatIsLostAtTheFirstLookWasLostSomewhereBefore() {
        assertThat(Watch.devices(FITTED, List.of(at(10, lost(SECOND)))).get(1).span())
                .isEqualTo(new Span(0, 10));
    }

    @Test
    void whatWasLostOnceIsLostAndLooksAtTheSameHoursAreOne() {
        List<WatchedDevice> devices =
                Watch.devices(FITTED, List.of(at(10), at(25, lost(FIRST)), at(25, lost(SECOND)), at(50, lost(FIRST))));
        assertThat(devices.get(0).span()).isEqualTo(new Span(10, 25));
        assertThat(devices.get(1).span()).isEqualTo(new Span(10, 25));
    }

    @Test
    void withoutAnyLookNothingIsKnown() {
        assertThat(Watch.devices(FITTED, List.of())).isEmpty();
    }
}
