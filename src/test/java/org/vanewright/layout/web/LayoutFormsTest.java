package org.vanewright.layout.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.vanewright.device.DeviceDocument;
import org.vanewright.engineering.placement.Arrangement;
import org.vanewright.engineering.solid.DeviceDesign.Base;
import org.vanewright.engineering.solid.DeviceDesign.Pair;
import org.vanewright.engineering.solid.DeviceDesign.Planform;
import org.vanewright.engineering.solid.DeviceDesign.Vane;
import org.vanewright.layout.RowDocument;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.record.RecordState;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.Standing;

/** What a new layout's form begins with. */
class LayoutFormsTest {
    @ParameterizedTest
    @CsvSource({"12, COMMON_FLOW_DOWN", "-12, COMMON_FLOW_UP"})
    void aPairOnOneBaseBringsItsArrangementAndAngle(double angleDeg, Arrangement made) {
        RowDocument row = row(blank(new Pair(angleDeg, 20.0)));
        assertThat(row.arrangement()).isEqualTo(made);
        assertThat(row.angleDeg()).isNull();
    }

    @Test
    void aSingleVaneBeginsCoRotating() {
        RowDocument row = row(blank(null));
        assertThat(row.device()).isEqualTo(new RevisionRef("vane", 1));
        assertThat(row.arrangement()).isEqualTo(Arrangement.CO_ROTATING);
        assertThat(row.angleDeg()).isEqualTo(15.0);
    }

    private static Form blank(@Nullable Pair pair) {
        Vane vane = new Vane(Planform.RECTANGULAR, 8.0, 20.0, 1.2, null, null, null, null, null, null, null);
        Base base = new Base(null, 30.0, 40.0, 1.0, null, null, null, null);
        DeviceDocument device = new DeviceDocument("Vane", null, vane, pair, base, false, null, 1040.0, true);
        return LayoutForms.blank(UnitSystem.METRIC, "wing@1", Optional.of(published(device)));
    }

    private static Revision<DeviceDocument> published(DeviceDocument device) {
        Standing standing = new Standing(null, null, null, null, Instant.EPOCH, "Club", null, null, null);
        return new Revision<>(
                "vane", 1, RecordState.PUBLISHED, device, "0".repeat(64), "Club", Instant.EPOCH, null, standing);
    }

    private static RowDocument row(Form form) {
        return LayoutForms.read(form).rows().get(0);
    }
}
