package org.vanewright.campaign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.engineering.input.InvalidInputException;

class PointTableTest {
    private static final String HEADER =
            "kind,configuration,sortie,indicated_airspeed_kt,pressure_altitude_ft,outside_air_temperature_c";
    private static final PlanDocument PLAN = Campaigns.plan(Measure.STALL_SPEED, FlyingOrder.INTERLEAVED);

    private static PointTable read(String... lines) {
        return PointTable.read(String.join("\r\n", lines), PLAN);
    }

    @Test
    void goodRowsAreReadAndEachBadOneIsNamedWithItsReason() {
        PointTable table = read(
                HEADER + ",mass_kg,remark",
                "STALL,A,1,46.5,4000,8,560,\"a \"\"quoted\"\", remark\"",
                "stall,B,2,\"44,5\",4000,8,560,",
                "STALL,C,2,44.5,4000,8,560,",
                "GLIDE,A,2,44.5,4000,8,560,",
                "STALL,A,2,fast,4000,8,560,",
                "STALL,A,2,44.5,4000,8,,",
                "STALL,A,2,44.5",
                "",
                "STALL,A,3,45,4000,8,560,");
        assertThat(table.rows()).isEqualTo(8);
        assertThat(table.points())
                .extracting(PointDocument::indicatedAirspeedKt)
                .containsExactly(46.5, 44.5, 45.0);
        assertThat(table.points().get(0).remark()).isEqualTo("a \"quoted\", remark");
        assertThat(table.points()).allMatch(p -> p.source() == PointSource.IMPORTED);
        assertThat(table.refused()).extracting(PointTable.Refused::row).containsExactly(3, 4, 5, 6, 7);
        assertThat(table.refused().get(0).reason())
                .contains("configuration is C")
                .contains("A, B");
        assertThat(table.refused().get(1).reason()).contains("kind is GLIDE");
        assertThat(table.refused().get(2).reason())
                .isEqualTo("indicated_airspeed_kt is fast; allowed is a number such as 12.5");
        assertThat(table.refused().get(3).reason()).contains("start_mass_kg is missing");
        assertThat(table.refused().get(4).reason()).contains("4 cells");
    }

    @Test
    void rowsOfOneRunAreItsLegs() {
        PointTable table = read(
                HEADER + ",run,ground_speed_kt,track_deg",
                "AIRSPEED,A,1,70,4000,8,first,83,12",
                "AIRSPEED,A,1,80,4000,8,second,90,12",
                "AIRSPEED,A,1,70,4000,8,first,61,131",
                "AIRSPEED,A,1,70,4000,8,first,68,252",
                "AIRSPEED,A,1,80,4000,8,second,75,190");
        assertThat(table.points()).hasSize(1);
        assertThat(table.points().get(0).legs())
                .containsExactly(
                        new LegDocument(83.0, 12.0, null),
                        new LegDocument(61.0, 131.0, null),
                        new LegDocument(68.0, 252.0, null));
        assertThat(table.refused()).singleElement().satisfies(r -> {
            assertThat(r.row()).isEqualTo(2);
            assertThat(r.reason()).contains("legs is 2").contains("3 to 12 legs");
        });
    }

    @Test
    void theSameRowGetsTheSameIdEachTime() {
        String[] lines = {HEADER + ",mass_kg", "STALL,A,1,46.5,4000,8,560", "STALL,A,1,46.5,4000,8,561"};
        List<String> ids =
                read(lines).points().stream().map(p -> String.valueOf(p.id())).toList();
        assertThat(read(lines).points()).extracting(PointDocument::id).containsExactlyElementsOf(ids);
        assertThat(ids).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "nothing", "kind,configuration", "\u0000", "kind,kind,sortie", "\"unclosed", "=1+1"})
    void whatIsNoTableIsRefusedAsAWhole(String text) {
        assertThatThrownBy(() -> PointTable.read(text, PLAN))
                .isInstanceOfSatisfying(
                        InvalidInputException.class,
                        e -> assertThat(e.problems().get(0).field()).isEqualTo("file"));
    }

    @Test
    void anUnknownColumnIsNamedSoThatNothingIsLostUnseen() {
        assertThatThrownBy(() -> read(HEADER + ",speed_of_wind"))
                .isInstanceOfSatisfying(
                        InvalidInputException.class,
                        e -> assertThat(e.problems().get(0).value()).isEqualTo("speed_of_wind"));
    }

    /** Whatever stands in the cells, a row becomes a valid test point or is named. */
    @Test
    void everyRowIsTakenOrNamed() {
        Random random = new Random(11);
        String[] cells = {
            "", "1", "-3", "1e9", "NaN", "A", "B", "STALL", "CRUISE", "46.5", "560", "\"x\ny\"", "'", "9".repeat(30)
        };
        for (int run = 0; run < 300; run++) {
            StringBuilder text = new StringBuilder(HEADER + ",mass_kg,power_percent\n");
            int rows = 1 + random.nextInt(6);
            for (int row = 0; row < rows; row++) {
                StringBuilder line = new StringBuilder(
                        random.nextBoolean() ? "STALL,A,1" : cells[random.nextInt(cells.length)] + ",A,1");
                for (int cell = 0; cell < 5; cell++) {
                    line.append(',').append(random.nextInt(3) == 0 ? cells[random.nextInt(cells.length)] : "500");
                }
                text.append(line).append('\n');
            }
            PointTable table = PointTable.read(text.toString(), PLAN);
            assertThat(table.points().size() + table.refused().size())
                    .as(text.toString())
                    .isEqualTo(table.rows());
            table.points().forEach(p -> assertThat(PointRules.check(p, PLAN)).isEmpty());
        }
    }
}
