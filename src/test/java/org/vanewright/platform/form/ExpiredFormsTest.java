package org.vanewright.platform.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.util.unit.DataSize;
import org.vanewright.platform.LimitSettings;

class ExpiredFormsTest {
    private final ExpiredForms forms =
            new ExpiredForms(new LimitSettings(600, 600, 50_000, DataSize.ofKilobytes(256), 2, Duration.ofSeconds(60)));

    @Test
    void oneNetworkKeepsSoManyFormsAnHourAndNoMore() {
        assertThat(keep("192.0.2.1")).contains(URI.create("/sign-in?back=%2Fdevices%2Fdrafts"));
        assertThat(keep("192.0.2.1")).isPresent();
        assertThat(keep("192.0.2.1")).isEmpty();
        assertThat(keep("198.51.100.7")).as("another network").isPresent();
    }

    private Optional<URI> keep(String address) {
        MockHttpServletRequest request = new MockHttpServletRequest("POST", "/devices/drafts");
        request.setRemoteAddr(address);
        request.setParameter("name", "Vane");
        return forms.keep(request, false);
    }
}
