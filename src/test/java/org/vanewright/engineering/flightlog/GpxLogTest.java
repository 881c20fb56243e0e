package org.vanewright.engineering.flightlog;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.engineering.input.InvalidInputException;

class GpxLogTest {
    private static final String HEAD = "<gpx xmlns=\"http://www.topografix.com/GPX/1/1\" version=\"1.1\"><trk><trkseg>";
    private static final String TAIL = "</trkseg></trk></gpx>";

    private final List<FlightSample> samples = new ArrayList<>();
    private final RowTally tally = new RowTally();

    private void read(String xml) {
        new GpxLog(new ByteArrayInputStream(xml.getBytes(UTF_8))).read(samples::add, tally);
    }

    private static String point(double lat, double lon, int second) {
        return String.format(
                Locale.ROOT,
                "<trkpt lat=\"%.7f\" lon=\"%.7f\"><ele>1000</ele><time>2026-05-02T09:%02d:%02dZ</time></trkpt>",
                lat,
                lon,
                second / 60,
                second % 60);
    }

    @Test
    void speedAndTrackComeFromThePositions() {
        // A minute of latitude is 1852.2 m on a sphere of 6371.0088 km; at 60° north one of longitude is half of it.
        StringBuilder xml = new StringBuilder(HEAD);
        for (int s = 0; s < 60; s++) {
            xml.append(point(60 + s / 3600.0, 10, s));
        }
        for (int s = 60; s < 120; s++) {
            xml.append(point(61, 10 - (s - 60) / 3600.0, s));
        }
        read(xml + TAIL);
        assertThat(samples).hasSize(120);
        assertThat(samples.get(30).groundSpeedKt()).isCloseTo(60.04, within(0.01));
        assertThat(samples.get(30).trackDeg()).isCloseTo(0, within(0.01));
        assertThat(samples.get(90).groundSpeedKt()).isCloseTo(60.04 * Math.cos(Math.toRadians(61)), within(0.01));
        assertThat(samples.get(90).trackDeg()).isCloseTo(270, within(0.1));
        assertThat(samples.get(90).pressureAltitudeFt()).isCloseTo(3280.84, within(0.01));
        assertThat(samples.get(90).indicatedAirspeedKt()).isNaN();
        assertThat(samples.get(1).timeS() - samples.get(0).timeS()).isEqualTo(1);
    }

    @Test
    void pointsWithoutTimeOrPlaceAndOnesOutOfOrderAreNamed() {
        read(HEAD + point(50, 8, 1) + point(50, 8, 1) + point(95, 8, 2) + "<trkpt lat=\"50\" lon=\"8\"/>"
                + point(50, 8, 3) + TAIL);
        assertThat(tally.rows()).isEqualTo(5);
        assertThat(tally.first()).extracting(RowTally.BadRow::row).containsExactly(2L, 3L, 4L);
        assertThat(samples).hasSize(2);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<!DOCTYPE gpx [<!ENTITY x SYSTEM \"file:///etc/passwd\">]><gpx><trk><name>&x;</name></trk></gpx>",
                "<!DOCTYPE gpx SYSTEM \"http://localhost:1/x.dtd\"><gpx/>",
                "<!DOCTYPE l [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;&a;\">]><gpx>&b;</gpx>",
                "<gpx>&unknown;</gpx>",
                "<gpx><trk>",
                "<html/>",
                "<gpx/>",
                "no XML",
                "",
            })
    void whatIsNoTrackIsRefused(String xml) {
        assertThatThrownBy(() -> read(xml))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("file");
        assertThat(samples).isEmpty();
    }

    @Test
    void deepXmlIsRefusedAndLongTextIsNotKept() {
        assertThatThrownBy(() -> read("<gpx>" + "<a>".repeat(100))).hasMessageContaining("40 levels");
        read(HEAD + "<x>" + "long ".repeat(100_000) + "</x>" + point(50, 8, 1) + TAIL);
        assertThat(samples).hasSize(1);
    }
}
