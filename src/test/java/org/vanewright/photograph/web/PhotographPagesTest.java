package org.vanewright.photograph.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.vanewright.testing.Pictures.decoded;
import static org.vanewright.testing.Pictures.encoded;
import static org.vanewright.testing.Pictures.quarters;
import static org.vanewright.testing.Pictures.withExif;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.FormElement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.account.Role;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;

/** Photographs from the form of a draft to the published page. */
class PhotographPagesTest extends ServerTest {
    private static final String REVISION = "/devices/rectangular-vane-8-by-20/revisions/1";

    private static Map<String, String> fields(Document page) {
        Map<String, String> fields = new LinkedHashMap<>();
        FormElement form = (FormElement) page.select("form[enctype]").get(0);
        form.formData().forEach(field -> fields.put(field.key(), field.value()));
        fields.remove("photographFiles");
        fields.remove("_csrf");
        return fields;
    }

    private static String draft(SignedIn member) {
        return member.postForm(REVISION + "/start", Map.of())
                .headers()
                .firstValue("Location")
                .map(URI::create)
                .map(URI::getPath)
                .orElseThrow();
    }

    private HttpResponse<byte[]> bytes(String path) {
        try {
            return HttpClient.newHttpClient()
                    .send(
                            HttpRequest.newBuilder(URI.create(origin() + path)).build(),
                            HttpResponse.BodyHandlers.ofByteArray());
        } catch (IOException e) {
            throw new AssertionError(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    @Test
    void aPhotographIsPrivateUntilItsRecordIsPublishedAndKeepsNoPlace() {
        SignedIn member = signIn(Role.MEMBER);
        SignedIn maintainer = signIn(Role.MAINTAINER);
        String draft = draft(member);
        byte[] taken = withExif(encoded(quarters(900, 600), "jpeg"), 6);

        Map<String, String> typed = fields(member.page(draft, 200));
        typed.put("name", "Photographed vane");
        typed.put("action", "add photographs");
        Document added = parsed(member.postFile(draft, typed, "photographFiles", taken), 200);
        String small = added.select(".photograph-row img").attr("src");
        assertThat(small).matches("/photographs/[0-9a-f]{64}-small\\.jpg");
        String large = small.replace("-small", "");
        assertThat(get(small).statusCode()).as("a visitor").isEqualTo(404);
        assertThat(member.get(small).statusCode()).isEqualTo(200);
        assertThat(member.get(small).headers().firstValue("Cache-Control")).hasValue("no-store");

        Map<String, String> named = fields(added);
        named.put("photographs[0].alt", "The vane on a ruler");
        named.put("photographs[0].caption", "As printed <script>alert(1)</script>");
        named.put("action", "save");
        assertThat(member.postMultipart(draft, named, Map.of()).statusCode()).isEqualTo(303);
        assertThat(member.page(draft, 200).select(".photograph-row")).hasSize(1);
        String id = draft.substring(draft.lastIndexOf('/') + 1);
        assertThat(member.postForm(
                                "/drafts/" + id + "/submit",
                                Map.of("version", "2", "licence", "CC0_1_0", "summary", "With a photograph"))
                        .headers()
                        .firstValue("Location")
                        .orElseThrow())
                .endsWith("/devices/photographed-vane/revisions/1");
        assertThat(get(large).statusCode()).as("still not public").isEqualTo(404);
        assertThat(maintainer.get(large).statusCode()).isEqualTo(200);
        assertThat(maintainer
                        .postForm("/review/devices/photographed-vane/1/publish", Map.of())
                        .headers()
                        .firstValue("Location")
                        .orElseThrow())
                .endsWith("/devices/photographed-vane");

        Document page = page("/devices/photographed-vane", 200);
        assertThat(page.select(".gallery img").attr("alt")).isEqualTo("The vane on a ruler");
        assertThat(page.select(".gallery figcaption").text()).isEqualTo("As printed <script>alert(1)</script>");
        HttpResponse<byte[]> served = bytes(large);
        assertThat(served.headers().firstValue("Content-Type")).hasValue("image/jpeg");
        assertThat(served.headers().firstValue("X-Content-Type-Options")).hasValue("nosniff");
        assertThat(served.headers().firstValue("Content-Security-Policy").orElseThrow())
                .startsWith("default-src 'none'; sandbox");
        assertThat(served.headers().firstValue("Cache-Control").orElseThrow()).contains("immutable");
        assertThat(new String(served.body(), StandardCharsets.ISO_8859_1)).doesNotContain("Exif", "Invented camera");
        assertThat(decoded(served.body()).getHeight()).as("turned upright").isEqualTo(900);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<svg xmlns='http://www.w3.org/2000/svg'><script>alert(1)</script></svg>",
                "GIF89a<script>alert(1)</script>",
                "<?php system('id'); ?>",
                "\u00ff\u00d8\u00ff\u00e0 and nothing more"
            })
    void whatIsNoPhotographIsRefusedBesideTheFieldAndNothingTypedIsLost(String content) {
        SignedIn member = signIn(Role.MEMBER);
        String draft = draft(member);
        Map<String, String> typed = fields(member.page(draft, 200));
        typed.put("description", "Typed before the upload");
        typed.put("action", "save");

        Document refused = parsed(
                member.postFile(draft, typed, "photographFiles", content.getBytes(StandardCharsets.ISO_8859_1)), 422);

        assertThat(refused.select("#photographs .error").text()).contains("JPEG");
        assertThat(refused.select("textarea[name=description]").text()).isEqualTo("Typed before the upload");
        assertThat(refused.select(".photograph-row")).isEmpty();
    }

    @Test
    void otherNamesThanHashesAreNotFound() {
        for (String path : new String[] {
            "/photographs/" + "a".repeat(64) + ".jpg",
            "/photographs/..%2f..%2fetc%2fpasswd.jpg",
            "/photographs/" + "a".repeat(63) + ".jpg",
            "/photographs/" + "A".repeat(64) + ".jpg"
        }) {
            assertThat(get(path).statusCode()).as(path).isIn(400, 404);
        }
    }
}
