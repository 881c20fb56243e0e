package org.vanewright.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.account.Role;
import org.vanewright.testing.RawHttp;
import org.vanewright.testing.ServerTest;

/** Addresses that try to leave the places that the service serves. */
abstract class PathCases extends ServerTest {
    private static final String DEVICE = Subjects.demo("devices");

    private static final List<String> PLACES = List.of(
            "/",
            "/css/",
            "/js/",
            "/images/",
            "/devices/",
            "/devices/" + DEVICE + "/",
            "/layouts/low-wing-pairs-over-the-taper/",
            "/drafts/",
            "/review/devices/",
            "/people/",
            "/api/v1/devices/",
            "/api/v1/drafts/",
            "/actuator/health/");

    private static final List<String> TARGETS = List.of(
            "application.yml", "db/migration/V1__records.sql", "WEB-INF/web.xml", "etc/passwd", "logback-spring.xml");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../",
                "..%2f",
                "..%2F",
                "%2e%2e/",
                "%2e%2e%2f",
                "%252e%252e%252f",
                "..%252f",
                "..;/",
                "..;x=y/",
                ";/../",
                "%2e%2e;/",
                "..\\",
                "..%5c",
                "%2e%2e%5c",
                "....//",
                "..%c0%af",
                "%c0%ae%c0%ae/",
                "..%00/",
                "%00/../",
                ".%00./",
                "//",
                "/./../",
                "..%ef%bc%8f",
                "file:/",
                "classpath:",
                "..%u2215"
            })
    void noWayUpLeadsToAFile(String up) {
        List<String> found = new ArrayList<>();
        for (int i = 0; i < PLACES.size(); i++) {
            String path = PLACES.get(i) + up + up + up + TARGETS.get(i % TARGETS.size());
            RawHttp.Answer answer = RawHttp.ask(origin(), "GET " + path + " HTTP/1.1");
            if (!List.of(303, 400, 404, 405).contains(answer.status()) || gives(answer.body())) {
                found.add(path + " gave " + answer.status());
            }
        }
        assertThat(found).isEmpty();
    }

    private static boolean gives(String body) {
        return body.contains("spring:")
                || body.contains("create table")
                || body.contains("root:x:")
                || body.contains("<appender")
                || body.contains("<web-app");
    }

    /** An extension or a parameter of the path opens nothing that the plain address does not. */
    @Test
    void aDisguisedAddressIsNotAnother() {
        List<String> open = new ArrayList<>();
        for (String path : List.of("/account", "/drafts", "/review", "/account/tokens")) {
            for (String end : List.of(
                    "/", ".json", ".css", ";a=b", ";.css", "%20", "%09", "%0a", "%00", "/.", "//", "%3b", "?.css")) {
                RawHttp.Answer answer = RawHttp.ask(origin(), "GET " + path + end + " HTTP/1.1");
                if (!List.of(303, 400, 404).contains(answer.status())) {
                    open.add(path + end + " gave " + answer.status());
                }
            }
        }
        assertThat(open).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"TRACE", "CONNECT", "TRACK", "PROPFIND", "get", "G\u0000T", "PUT", "DELETE", "PATCH"})
    void methodsThatNobodyAsksForDoNothing(String method) {
        RawHttp.Answer answer = RawHttp.ask(origin(), method + " /devices/" + DEVICE + " HTTP/1.1", "X-Echo: back");
        assertThat(answer.status()).isIn(400, 403, 405, 501);
        assertThat(answer.body()).doesNotContain("X-Echo");
    }

    /** The name of an uploaded file is nobody's business. */
    @Test
    void theNameOfAnUploadedFileIsNotUsed() {
        var member = signIn(Role.MEMBER);
        String name = "surfaces[0].panels[0].innerSection.file";
        var answer = member.postMultipart(
                "/airframes/new",
                Map.of("action", "check", "name", "Up"),
                Map.of(name + "\"; filename=\"../../../../tmp/walked.txt", "1 0\n0 0\n1 0\n"));
        assertThat(answer.statusCode()).isIn(200, 400, 422);
        assertThat(new File("/tmp/walked.txt")).doesNotExist();
    }
}
