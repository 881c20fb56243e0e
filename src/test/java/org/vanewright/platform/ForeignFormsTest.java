package org.vanewright.platform;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.servlet.ServletException;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.mock.web.MockFilterChain;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;

class ForeignFormsTest {
    @ParameterizedTest
    @CsvSource({
        "POST, /layouts/new, same-origin, 200",
        "POST, /layouts/new, none, 200",
        "POST, /api/v1/layouts, , 200",
        "GET, /layouts, cross-site, 200",
        "POST, /layouts/new, cross-site, 403",
        "POST, /layouts/new, same-site, 403",
        "POST, /api/v1/layouts, cross-site, 403",
        "DELETE, /layouts/a, cross-site, 403",
        "POST, /api/v1/calculations/section, cross-site, 200"
    })
    void onlyThisSitesOwnFormsMayChangeAnything(String method, String path, @Nullable String site, int status)
            throws ServletException, IOException {
        MockHttpServletRequest request = new MockHttpServletRequest(method, path);
        if (site != null) {
            request.addHeader("Sec-Fetch-Site", site);
        }
        MockHttpServletResponse response = new MockHttpServletResponse();
        MockFilterChain chain = new MockFilterChain();
        new ForeignForms().doFilter(request, response, chain);
        assertThat(response.getStatus()).isEqualTo(status);
        assertThat(chain.getRequest() != null).as("passed on").isEqualTo(status == 200);
    }
}
