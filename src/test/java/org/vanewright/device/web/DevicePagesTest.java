package org.vanewright.device.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.vanewright.account.Role;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;

/** Pages and forms of devices, as plain requests. */
class DevicePagesTest extends ServerTest {
    private static final String DEMO = "/devices/rectangular-vane-8-by-20";

    private @Nullable SignedIn signedIn;

    private SignedIn member() {
        if (signedIn == null) {
            signedIn = signIn(Role.MEMBER);
        }
        return signedIn;
    }

    private static String location(HttpResponse<String> response) {
        assertThat(response.statusCode()).as(response.body()).isEqualTo(303);
        return URI.create(response.headers().firstValue("Location").orElseThrow())
                .getPath();
    }

    @Test
    void theListShowsADrawingOfEachDevice() {
        Document page = page("/devices", 200);
        assertThat(page.select(".card img").eachAttr("src"))
                .hasSizeGreaterThanOrEqualTo(3)
                .allSatisfy(src -> assertThat(get(src).headers().firstValue("content-type"))
                        .contains("image/svg+xml"));
        assertThat(page.select(".card a").eachAttr("href")).contains(DEMO, "/devices/triangular-vane-10-by-25");
        assertThat(page("/devices?cursor=nonsense", 400).select("main").text()).contains("cursor is nonsense");
    }

    @Test
    void aDevicePageSaysWhatItIsAndWhereItsFilesAre() {
        Document page = page("/devices/ogival-pair-on-one-base", 200);
        String text = page.select("main").text();
        assertThat(text)
                .contains("Invented", "Pair, ogival, 9 mm high", "15° toe-in (common flow down)")
                .contains("common practice, no source", "typical ones, without a source", "divergence theorem")
                .contains("Before anything is fitted", "cannot stand on its trailing edge");
        assertThat(page.select(".downloads a").eachAttr("href"))
                .allSatisfy(href -> assertThat(get(href).statusCode()).isEqualTo(200))
                .hasSize(4);
        assertThat(page.select(".figure img").eachAttr("alt")).hasSize(2).noneMatch(String::isBlank);
        assertThat(page.select(".figure img").eachAttr("src")).allSatisfy(src -> {
            HttpResponse<String> drawing = get(src);
            assertThat(drawing.headers().firstValue("content-type")).contains("image/svg+xml");
            assertThat(drawing.headers().firstValue("cache-control").orElseThrow())
                    .contains("immutable");
            assertThat(drawing.body()).contains("--ink: #", ".lettering {", "<path");
        });
        assertThat(page.select("[style], script:not([src]):not([type$=json])")).isEmpty();
        assertThat(page.select("[data-solid]").attr("data-solid")).endsWith("/solid.stl?revision=1");
        assertThat(page(DEMO, 200).select("main").text()).contains("standing ready to print");
    }

    @Test
    void theFiguresAreThoseOfTheCalculation() {
        String design = json(get("/api/v1" + DEMO), 200).get("content").toString();
        double volume = json(postJson("/api/v1/calculations/solid", design), 200)
                .get("volumeMm3")
                .asDouble();
        assertThat(page(DEMO, 200).select("main").text().replace('\u00a0', ' '))
                .contains(String.format(Locale.ROOT, "%.1f mm³", volume));
    }

    @Test
    void theFormStartsWithADeviceThatCanBePublished() {
        Map<String, String> fields = fields(member().page("/devices/new", 200));
        fields.put("name", "From the form's own defaults");
        fields.put("action", "save");
        String draft = location(member().postForm("/devices/new", fields));
        assertThat(member().page(draft, 200).select("#form-problems li")).isEmpty();
        assertThat(publishing().publish(member().person(), draft)).isEqualTo("/devices/from-the-form-s-own-defaults");
    }

    @Test
    void aRefusedFormNamesItsFieldsAndKeepsWhatWasTyped() {
        Map<String, String> fields = fields(member().page("/devices/new", 200));
        fields.put("vane.heightMm", "tall");
        fields.put("vane.lengthMm", "500");
        fields.put("action", "save");
        Document page = parsed(member().postForm("/devices/new", fields), 422);
        assertThat(page.select("#vane-heightMm").val()).isEqualTo("tall");
        assertThat(page.select("#vane-heightMm-error").text()).contains("a number such as 12.5");
        assertThat(page.select("#vane-lengthMm-error").text()).contains("from 2 mm to 200 mm");
        assertThat(page.select("#name-error").text()).isNotBlank();
        assertThat(page.select("#form-problems li")).hasSize(3);
    }

    @Test
    void fieldsThatMeanNothingForTheChoiceAreNotReadButKept() {
        Map<String, String> fields = fields(member().page("/devices/new", 200));
        fields.put("name", "Ogive with leftovers");
        fields.put("vane.planform", "OGIVAL");
        fields.put("vane.tipRadiusMm", "3");
        fields.put("vane.tipLengthMm", "nonsense");
        fields.put("pair.gapMm", "nonsense");
        Document checked = parsed(member().postForm("/devices/new", fields), 200);
        assertThat(checked.select("#form-problems li")).isEmpty();
        assertThat(checked.select("#vane-tipLengthMm").val()).isEqualTo("nonsense");
        assertThat(checked.select("#preview svg.views")).hasSize(1);
    }

    @Test
    void thePreviewDrawsWeighsAndNamesProblems() {
        Map<String, String> fields = fields(member().page("/devices/new", 200));
        Document sound = parsed(member().postForm("/devices/preview", fields), 200);
        assertThat(sound.select("svg.still, svg.views")).hasSize(2);
        assertThat(sound.text()).contains("Mass at");
        assertThat(sound.select("li[data-field]").eachAttr("data-field")).containsExactly("name");
        fields.put("vane.lengthMm", "90");
        Document impossible = parsed(member().postForm("/devices/preview", fields), 200);
        assertThat(impossible.select("svg")).isEmpty();
        assertThat(impossible.select("li[data-field=vane-lengthMm] .message").text())
                .contains("at most");
    }

    @Test
    void whoComesSecondSeesBothVersionsAndLosesNothing() {
        Map<String, String> fields = fields(member().page("/devices/new", 200));
        fields.put("name", "Edited by two");
        fields.put("action", "save");
        String draft = location(member().postForm("/devices/new", fields));
        Map<String, String> first = fields(member().page(draft, 200));
        Map<String, String> second = new LinkedHashMap<>(first);
        first.put("vane.heightMm", "9");
        first.put("action", "save");
        location(member().postForm(draft, first));
        second.put("vane.heightMm", "7.5");
        second.put("action", "save");
        Document conflict = parsed(member().postForm(draft, second), 409);
        assertThat(conflict.select(".conflict td").eachText()).containsSequence("8", "9", "7.5");
        assertThat(conflict.select("#vane-heightMm").val()).isEqualTo("7.5");
        Map<String, String> again = fields(conflict);
        again.put("action", "save");
        location(member().postForm(draft, again));
        assertThat(member().page(draft, 200).select("#vane-heightMm").val()).isEqualTo("7.5");
    }

    @Test
    void filesOfWhatIsNotPublishedSaySoAndAreKeptByNobody() {
        Map<String, String> fields = fields(member().page("/devices/new", 200));
        fields.put("name", "Waiting vane");
        fields.put("action", "save");
        String draft = location(member().postForm("/devices/new", fields));
        publishing().submit(member().person(), draft);
        String drawing = "/devices/waiting-vane/drawing.svg?revision=1";
        assertThat(get(drawing).statusCode()).isEqualTo(404);
        HttpResponse<String> own = member().get(drawing);
        assertThat(own.body()).contains("not published");
        assertThat(own.headers().firstValue("Cache-Control").orElseThrow()).contains("no-store", "private");
        assertThat(get(DEMO + "/drawing.svg?revision=1").body()).doesNotContain("not published");
    }

    @Test
    void platesSayWhatIsWrongBesideTheField() {
        Document page = page(DEMO + "/plates?bedWidthMm=0&count=9000&spacingMm=4", 400);
        assertThat(page.select("#bedWidthMm-error").text()).contains("from 50 mm to 1000 mm");
        assertThat(page.select("#count-error").text()).contains("1 to 500");
        assertThat(page.select("#bedWidthMm").val()).isEqualTo("0");
        assertThat(page(DEMO + "/plates", 200).select(".plates .card")).hasSize(1);
    }

    /** What a browser would send back of the page's form. */
    private static Map<String, String> fields(Document page) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (Element field : page.select(".device-form [name]")) {
            boolean chosen = !field.is("[type=radio], [type=checkbox]") || field.hasAttr("checked");
            if (chosen && !field.is("button")) {
                fields.put(field.attr("name"), field.is("select") ? chosen(field) : field.val());
            }
        }
        return fields;
    }

    private static String chosen(Element select) {
        return select.select("option[selected]").attr("value");
    }
}
