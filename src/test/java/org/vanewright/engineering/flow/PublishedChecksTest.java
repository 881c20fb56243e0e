package org.vanewright.engineering.flow;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.concurrent.ConcurrentSkipListMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every published figure: those that agree must go on agreeing, those known to differ must be shown as differing. */
class PublishedChecksTest {
    private static final ConcurrentSkipListMap<Integer, String> TABLE = new ConcurrentSkipListMap<>();

    static List<PublishedCheck> checks() {
        return PublishedChecks.all();
    }

    @ParameterizedTest
    @MethodSource("checks")
    void standsBesideThePublishedFigure(PublishedCheck check) {
        double computed = check.computed().getAsDouble();
        TABLE.put(PublishedChecks.all().indexOf(check), row(check, computed));
        assertThat(computed).as(check.quantity()).isFinite();
        assertThat(check.agrees(computed))
                .as(
                        "%s, %s: computed %s, published %s",
                        check.quantity(), check.conditions(), computed, check.published())
                .isEqualTo(check.reasonOutside() == null);
    }

    @Test
    void everyFigureHasASourceAndTheBadOnesAreFew() {
        assertThat(checks()).hasSize(183).allSatisfy(check -> {
            assertThat(check.source()).isNotBlank();
            assertThat(check.quantity()).isNotBlank();
            assertThat(check.tolerance()).isPositive();
        });
        assertThat(checks().stream().filter(check -> check.reasonOutside() != null))
                .hasSize(22);
    }

    @AfterAll
    static void printTable() {
        TABLE.values().forEach(System.out::println);
    }

    private static String row(PublishedCheck check, double computed) {
        return String.format(
                Locale.ROOT,
                "%s %-48s %-48s computed %12.6g  published %12.6g  tolerance %9.3g %s",
                check.agrees(computed) ? " " : "!",
                check.quantity(),
                check.conditions(),
                computed,
                check.published(),
                check.tolerance(),
                check.unit());
    }
}
