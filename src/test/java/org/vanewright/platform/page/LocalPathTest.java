package org.vanewright.platform.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.NullSource;
import org.junit.jupiter.params.provider.ValueSource;

class LocalPathTest {
    @ParameterizedTest
    @ValueSource(
            strings = {"/", "/airframes", "/airframes/a-b/revisions/2", "/airframes?cursor=ab%3D", "/search?q=a+b&x=1"})
    void keepsPathsOfThisService(String path) {
        assertThat(LocalPath.orHome(path)).isEqualTo(path);
        assertThat(URI.create(LocalPath.orHome(path)).getHost()).isNull();
    }

    @ParameterizedTest
    @NullSource
    @ValueSource(
            strings = {
                "", "airframes", "//evil.example", "/\\evil.example", "https://evil.example/", "javascript:alert(1)",
                "/a\r\nSet-Cookie: x=1", "/a b", "/%zz", "/a#b", "///evil.example", "/<script>"
            })
    void leadsHomeForAnythingElse(String path) {
        assertThat(LocalPath.orHome(path)).isEqualTo("/");
    }
}
