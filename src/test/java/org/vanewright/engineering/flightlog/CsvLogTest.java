package org.vanewright.engineering.flightlog;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.engineering.input.InvalidInputException;

class CsvLogTest {
    private static final LogMapping TIME_AND_SPEED = mapping(LogUnit.SECONDS, LogUnit.KT);

    private final List<FlightSample> samples = new ArrayList<>();
    private final RowTally tally = new RowTally();

    private static LogMapping mapping(LogUnit time, LogUnit speed) {
        return new LogMapping(
                List.of(new LogColumn(LogQuantity.TIME, 0, time), new LogColumn(LogQuantity.AIRSPEED, 1, speed)));
    }

    private static InputStream file(String text) {
        return new ByteArrayInputStream(text.getBytes(UTF_8));
    }

    private void read(String text, LogMapping mapping) {
        new CsvLog(file(text)).read(mapping, samples::add, tally);
    }

    @ParameterizedTest
    @CsvSource({
        "KT, 50, 50",
        "M_PER_S, 25.7222, 50",
        "KM_PER_H, 92.6, 50",
        "MPH, 57.539, 50",
    })
    void speedsBecomeKnots(LogUnit unit, String written, double expectedKt) {
        read("t,v\n0," + written + "\n", mapping(LogUnit.SECONDS, unit));
        assertThat(samples.get(0).indicatedAirspeedKt()).isCloseTo(expectedKt, within(0.001));
        assertThat(samples.get(0).pressureAltitudeFt()).as("not recorded").isNaN();
    }

    @Test
    void everyOtherUnitIsTurned() {
        assertThat(LogUnit.M.toTrade(1000)).isCloseTo(3280.84, within(0.01));
        assertThat(LogUnit.M_PER_S2.toTrade(9.80665)).isEqualTo(1);
        assertThat(LogUnit.RAD_PER_S.toTrade(Math.PI)).isCloseTo(180, within(1e-9));
        assertThat(LogUnit.FAHRENHEIT.toTrade(50)).isCloseTo(10, within(1e-9));
    }

    @Test
    void timesMayBeInstantsOrClocksOverMidnight() {
        read(
                "t,v\n2026-05-02T09:14:00Z,1\n2026-05-02 09:14:00.5,2\n2026-05-02T11:14:01+02:00,3\n",
                mapping(LogUnit.INSTANT, LogUnit.KT));
        assertThat(samples).extracting(FlightSample::timeS).containsExactly(1777713240.0, 1777713240.5, 1777713241.0);
        samples.clear();
        read("t,v\n23:59:59,1\n23:59:59.5,2\n00:00:00,3\n", mapping(LogUnit.CLOCK, LogUnit.KT));
        assertThat(samples).extracting(FlightSample::timeS).containsExactly(86399.0, 86399.5, 86400.0);
    }

    @Test
    void semicolonsRemarksMarksAndDecimalCommasAreUnderstood() {
        String text = "\uFEFF# made by a logger\nZeit;IAS\n0;50,5\n\n1;51\n";
        assertThat(new CsvLog(file(text)).header()).containsExactly("Zeit", "IAS");
        assertThat(new CsvLog(file(text)).firstRows(5)).containsExactly(List.of("0", "50,5"), List.of("1", "51"));
        read(text, TIME_AND_SPEED);
        assertThat(samples).extracting(FlightSample::indicatedAirspeedKt).containsExactly(50.5, 51.0);
    }

    @Test
    void badRowsAreCountedAndTheFirstOnesNamed() {
        StringBuilder text = new StringBuilder("t,v\n0,50\n0,51\nx,52\n1,fast\n2,9999\n3,\n4\n");
        read(text.toString(), TIME_AND_SPEED);
        assertThat(tally.rows()).isEqualTo(7);
        assertThat(tally.bad()).isEqualTo(4);
        assertThat(tally.first()).extracting(RowTally.BadRow::row).containsExactly(3L, 4L, 5L, 6L);
        assertThat(tally.first().get(0).reason()).contains("not after");
        assertThat(tally.first().get(2).reason()).contains("fast", "-10 to 500 kt");
        assertThat(samples).extracting(FlightSample::timeS).containsExactly(0.0, 3.0, 4.0);
        for (int i = 0; i < 100; i++) {
            text.append("0,1\n");
        }
        RowTally many = new RowTally();
        new CsvLog(file(text.toString())).read(TIME_AND_SPEED, samples::add, many);
        assertThat(many.bad()).isEqualTo(104);
        assertThat(many.first()).hasSize(RowTally.NAMED);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "only\n1\n", "t,v\n0,\"never closed", "t,v\n0,\u0000\u0001", "# nothing\n"})
    void whatIsNoTableIsRefused(String text) {
        assertThatThrownBy(() -> read(text, TIME_AND_SPEED))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("file");
    }

    @Test
    void anEndlessLineAndAMillionColumnsAreRefusedBeforeTheyFillTheMemory() {
        assertThatThrownBy(() -> new CsvLog(new Endless("1".getBytes(UTF_8))).header())
                .hasMessageContaining("a row of more than 64 KiB");
        assertThatThrownBy(() -> new CsvLog(new Endless("a,".getBytes(UTF_8))).header())
                .isInstanceOf(InvalidInputException.class);
        assertThatThrownBy(() -> new CsvLog(new Endless("\n\"a\n".getBytes(UTF_8))).header())
                .isInstanceOf(InvalidInputException.class);
        assertThatThrownBy(() -> read("t" + ",v".repeat(600) + "\n", TIME_AND_SPEED))
                .hasMessageContaining("601 columns");
    }

    @Test
    void aMappingNamesTimeOnceAndUnitsThatFit() {
        assertThatThrownBy(() -> new LogMapping(List.of(new LogColumn(LogQuantity.AIRSPEED, 1, LogUnit.FT))))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("airspeed = ft")
                .hasMessageContaining("time = missing");
        assertThatThrownBy(() -> new LogMapping(List.of(
                        new LogColumn(LogQuantity.TIME, 0, LogUnit.SECONDS),
                        new LogColumn(LogQuantity.AIRSPEED, 0, LogUnit.KT))))
                .hasMessageContaining("one column twice");
        assertThatThrownBy(() -> read(
                        "a,b\n",
                        new LogMapping(List.of(
                                new LogColumn(LogQuantity.TIME, 0, LogUnit.SECONDS),
                                new LogColumn(LogQuantity.AIRSPEED, 7, LogUnit.KT)))))
                .hasMessageContaining("column 8");
    }

    /** The same bytes for ever. */
    private static final class Endless extends InputStream {
        private final byte[] bytes;
        private int next;

        Endless(byte[] bytes) {
            this.bytes = bytes;
        }

        @Override
        public int read() {
            return bytes[next++ % bytes.length];
        }
    }
}
