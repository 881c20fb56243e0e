package org.vanewright.device.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.vanewright.testing.ServerTest;

/** Pages and forms of devices, as plain requests. */
class DevicePagesTest extends ServerTest {
    private static final String DEMO = "/devices/rectangular-vane-8-by-20";

    @Test
    void theListShowsADrawingOfEachDevice() {
        Document page = page("/devices", 200);
        assertThat(page.select(".card svg.still")).hasSizeGreaterThanOrEqualTo(3);
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
        assertThat(page.select("svg[role=img] > desc").eachText()).hasSize(2).noneMatch(String::isBlank);
        assertThat(page.select("[style], script:not([src])")).isEmpty();
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
        Map<String, String> fields = fields(page("/devices/new", 200));
        fields.put("name", "From the form's own defaults");
        fields.put("action", "save");
        var created = postForm("/devices/new", fields);
        assertThat(created.statusCode()).isEqualTo(302);
        assertThat(created.headers().firstValue("Location").orElseThrow())
                .endsWith("/devices/from-the-form-s-own-defaults");
    }

    @Test
    void aRefusedFormNamesItsFieldsAndKeepsWhatWasTyped() {
        Map<String, String> fields = fields(page("/devices/new", 200));
        fields.put("vane.heightMm", "tall");
        fields.put("vane.lengthMm", "500");
        fields.put("action", "save");
        Document page = parsed(postForm("/devices/new", fields), 422);
        assertThat(page.select("#vane-heightMm").val()).isEqualTo("tall");
        assertThat(page.select("#vane-heightMm-error").text()).contains("a number such as 12.5");
        assertThat(page.select("#vane-lengthMm-error").text()).contains("from 2 mm to 200 mm");
        assertThat(page.select("#name-error").text()).isNotBlank();
        assertThat(page.select("#form-problems li")).hasSize(3);
    }

    @Test
    void fieldsThatMeanNothingForTheChoiceAreNotReadButKept() {
        Map<String, String> fields = fields(page("/devices/new", 200));
        fields.put("name", "Ogive with leftovers");
        fields.put("vane.planform", "OGIVAL");
        fields.put("vane.tipRadiusMm", "3");
        fields.put("vane.tipLengthMm", "nonsense");
        fields.put("pair.gapMm", "nonsense");
        Document checked = parsed(postForm("/devices/new", fields), 200);
        assertThat(checked.select("#form-problems li")).isEmpty();
        assertThat(checked.select("#vane-tipLengthMm").val()).isEqualTo("nonsense");
        assertThat(checked.select("#preview svg.views")).hasSize(1);
    }

    @Test
    void thePreviewDrawsWeighsAndNamesProblems() {
        Map<String, String> fields = fields(page("/devices/new", 200));
        Document sound = parsed(postForm("/devices/preview", fields), 200);
        assertThat(sound.select("svg.still, svg.views")).hasSize(2);
        assertThat(sound.text()).contains("Mass at");
        assertThat(sound.select("li[data-field]").eachAttr("data-field")).containsExactly("name");
        fields.put("vane.lengthMm", "90");
        Document impossible = parsed(postForm("/devices/preview", fields), 200);
        assertThat(impossible.select("svg")).isEmpty();
        assertThat(impossible.select("li[data-field=vane-lengthMm] .message").text())
                .contains("at most");
    }

    @Test
    void whoComesSecondSeesBothVersionsAndLosesNothing() {
        Map<String, String> fields = fields(page("/devices/new", 200));
        fields.put("name", "Edited by two");
        fields.put("action", "save");
        postForm("/devices/new", fields);
        Map<String, String> first = fields(page("/devices/edited-by-two/edit", 200));
        Map<String, String> second = new LinkedHashMap<>(first);
        first.put("vane.heightMm", "9");
        first.put("action", "save");
        assertThat(postForm("/devices/edited-by-two/edit", first).statusCode()).isEqualTo(302);
        second.put("vane.heightMm", "7.5");
        second.put("action", "save");
        Document conflict = parsed(postForm("/devices/edited-by-two/edit", second), 409);
        assertThat(conflict.select(".conflict td").eachText()).containsSequence("8", "9", "7.5");
        assertThat(conflict.select("#vane-heightMm").val()).isEqualTo("7.5");
        Map<String, String> again = fields(conflict);
        again.put("action", "save");
        assertThat(postForm("/devices/edited-by-two/edit", again).statusCode()).isEqualTo(302);
        assertThat(page("/devices/edited-by-two", 200).select(".history li")).hasSize(3);
        assertThat(page("/devices/edited-by-two/revisions/1", 200)
                        .select("main")
                        .text())
                .contains("A later revision has been published");
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
