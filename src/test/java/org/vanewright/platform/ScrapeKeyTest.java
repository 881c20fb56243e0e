package org.vanewright.platform;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.servlet.ServletException;
import java.io.IOException;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.mock.web.MockFilterChain;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;

/** Who gets to read the measures. */
class ScrapeKeyTest {
    @ParameterizedTest
    @CsvSource({
        "a key, Bearer a key, /actuator/prometheus, 200",
        "a key, Bearer a key, /actuator/sbom/application, 200",
        "a key, Bearer another, /actuator/prometheus, 404",
        "a key, Bearer another, /actuator/prometheus/, 404",
        "a key, Bearer another, /actuator/prometheus;v=1, 404",
        "a key, , /actuator/sbom, 404",
        "a key, a key, /actuator/prometheus, 404",
        ", Bearer, /actuator/prometheus, 404",
        ", , /actuator/prometheus, 404",
        ", , /actuator/health, 200",
        "a key, , /devices, 200"
    })
    void onlyWithTheKey(String key, String given, String path, int status) throws ServletException, IOException {
        MockHttpServletRequest request = new MockHttpServletRequest("GET", path);
        if (given != null) {
            request.addHeader("Authorization", given);
        }
        MockHttpServletResponse response = new MockHttpServletResponse();
        new ScrapeKey(key == null ? "" : key).doFilter(request, response, new MockFilterChain());
        assertThat(response.getStatus()).isEqualTo(status);
    }

    @ParameterizedTest
    @CsvSource({"0123456789abcdef, true", "short, false", "'a line\nand another', false", ", false"})
    void aRequestKeepsTheIdThatAProxyGaveIt(String given, boolean kept) throws ServletException, IOException {
        MockHttpServletRequest request = new MockHttpServletRequest("GET", "/");
        if (given != null) {
            request.addHeader(RequestIds.HEADER, given);
        }
        MockHttpServletResponse response = new MockHttpServletResponse();
        new RequestIds().doFilter(request, response, new MockFilterChain());
        String answered = response.getHeader(RequestIds.HEADER);
        assertThat(answered).isNotBlank().matches("[A-Za-z0-9_-]{8,64}");
        assertThat(Objects.equals(answered, given)).isEqualTo(kept);
        assertThat(RequestIds.current()).isNull();
    }
}
