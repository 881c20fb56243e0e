package org.vanewright.layout.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.ActiveProfiles;

/** Where nobody may edit, layouts can be read and nothing offers or allows a change. */
@SpringBootTest(
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = "vanewright.open-editing=false")
@ActiveProfiles({"test", "demo"})
class LayoutEditingClosedTest {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final String DEMO = "/layouts/low-wing-pairs-over-the-taper";

    @LocalServerPort
    private int port;

    private HttpResponse<String> send(String method, String path, String type, String body)
            throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://localhost:" + port + path))
                .header("Content-Type", type)
                .header("If-Match", "*")
                .method(method, BodyPublishers.ofString(body))
                .build();
        return CLIENT.send(request, BodyHandlers.ofString());
    }

    @Test
    void everyWayToWriteIsForbidden() throws Exception {
        String form = "application/x-www-form-urlencoded";
        assertThat(send("GET", "/layouts/new", form, "").statusCode()).isEqualTo(403);
        assertThat(send("GET", DEMO + "/edit", form, "").statusCode()).isEqualTo(403);
        assertThat(send("POST", "/layouts/new", form, "action=save&name=x").statusCode())
                .isEqualTo(403);
        assertThat(send("POST", DEMO + "/edit", form, "action=save&base=1&name=x")
                        .statusCode())
                .isEqualTo(403);
        String content = send("GET", "/api/v1" + DEMO, form, "").body();
        String document = content.substring(content.indexOf("\"content\":") + 10, content.lastIndexOf('}'));
        document = document.substring(0, document.lastIndexOf('}') + 1);
        assertThat(send("POST", "/api/v1/layouts", "application/json", document).statusCode())
                .isEqualTo(403);
        assertThat(send("POST", "/api/v1" + DEMO + "/revisions", "application/json", document)
                        .statusCode())
                .isEqualTo(403);
        assertThat(send("GET", "/api/v1" + DEMO + "/revisions", form, "").body())
                .contains("\"revision\":1")
                .doesNotContain("\"revision\":2");
    }

    @Test
    void noPageOffersToWrite() throws Exception {
        for (String path : new String[] {"/layouts", DEMO, DEMO + "/revisions/1"}) {
            HttpResponse<String> response = send("GET", path, "text/html", "");
            assertThat(response.statusCode()).as(path).isEqualTo(200);
            Document page = Jsoup.parse(response.body());
            assertThat(page.select("a[href$=/edit], a[href*=/new]")).as(path).isEmpty();
        }
        assertThat(send("GET", DEMO + "/template.svg", "text/html", "").statusCode())
                .isEqualTo(200);
    }
}
