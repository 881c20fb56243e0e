package org.vanewright.platform;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CalculationRateLimitTest {
    @ParameterizedTest
    @CsvSource({
        "192.0.2.7, 192.0.2.7",
        "2001:db8:1:2:3:4:5:6, 2001:db8:1:2:",
        "2001:db8:1:2:ffff::1, 2001:db8:1:2:",
        "2001:db8::1, 2001:db8:",
        "fe80:0:0:0:1:2:3:4%eth0, fe80:0:0:0:",
        "::1, ::1",
        "::ffff:192.0.2.7, ::ffff:192.0.2.7",
    })
    void callersOfOneNetworkCountTogether(String address, String network) {
        assertThat(Networks.of(address)).isEqualTo(network);
    }

    @ParameterizedTest
    @CsvSource({
        "/api/v1/calculations/flow, true",
        "/bench/flow, true",
        "/layouts/one-row/study, true",
        "/api/v1/layouts/one-row/study, true",
        "/airframes/high-wing/study, true",
        "/layouts/one-row/gauges, true",
        "/layouts/one-row/revisions/1/suggestions, true",
        "/layouts/one-row, false",
        "/airframes, false",
    })
    void whatComputesFlowsIsCounted(String path, boolean counted) {
        assertThat(CalculationRateLimit.guards(path)).isEqualTo(counted);
    }
}
