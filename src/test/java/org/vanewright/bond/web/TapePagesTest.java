package org.vanewright.bond.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.vanewright.testing.ServerTest;

/** The tape of a layout on its page and in its files. */
class TapePagesTest extends ServerTest {
    private static final String LAYOUT = "/layouts/high-wing-one-row-co-rotating";

    private int devices() {
        return page(LAYOUT, 200).select(".stations tbody tr").size();
    }

    @Test
    void everyBaseOfBothWingsAndTheSparesIsCut() {
        int devices = devices();
        Document page = page(LAYOUT + "/tape-plan?rollWidthMm=50&spares=3", 200);
        assertThat(page.select(".facts").text())
                .contains("Pieces " + (devices + 3))
                .contains("Waste");
        assertThat(page.select("figure svg")).hasSize(1);
        assertThat(page.select("#rollWidthMm").val()).isEqualTo("50");
        assertThat(page.text()).contains("stick the tape to the base first");

        String svg = get(LAYOUT + "/tape-plan.svg?rollWidthMm=50&spares=3").body();
        Document drawing = Jsoup.parse(svg, "", Parser.xmlParser());
        assertThat(drawing.select("[id*=CUT] > *, [class*=cut] > *, g[data-layer=CUT] > *")
                        .size())
                .as(svg.substring(0, Math.min(1500, svg.length())))
                .isEqualTo(devices + 3);
        assertThat(svg).contains("True scale, millimetres");
    }

    @Test
    void filesComeAsAttachmentsUnderAStrongTag() {
        HttpResponse<String> dxf = get(LAYOUT + "/tape-plan.dxf?revision=1&rollWidthMm=25");
        assertThat(dxf.statusCode()).isEqualTo(200);
        assertThat(dxf.headers().firstValue("Content-Type").orElseThrow()).startsWith("image/vnd.dxf");
        assertThat(dxf.headers().firstValue("Content-Disposition").orElseThrow())
                .contains("attachment", "high-wing-one-row-co-rotating-r1-tape-plan-mm.dxf");
        String etag = dxf.headers().firstValue("ETag").orElseThrow();
        assertThat(get(LAYOUT + "/tape-plan.dxf?revision=1&rollWidthMm=25", "If-None-Match", etag)
                        .statusCode())
                .isEqualTo(304);
        assertThat(get(LAYOUT + "/tape-plan.dxf?revision=1&rollWidthMm=30")
                        .headers()
                        .firstValue("ETag"))
                .isNotEqualTo(dxf.headers().firstValue("ETag"));
        assertThat(dxf.body()).contains("CUT", "EOF");
    }

    @ParameterizedTest
    @CsvSource({
        "rollWidthMm, 2",
        "rollWidthMm, 10",
        "rollWidthMm, 1e9",
        "rollWidthMm, wide",
        "spares, -1",
        "spares, 501",
        "spares, 1.5",
        "spares, many",
        "spares, 99999999999999999999"
    })
    void badParametersAreNamed(String field, String typed) {
        Document page = page(LAYOUT + "/tape-plan?" + field + "=" + typed, 400);
        assertThat(page.select("#" + field + "-error").text()).startsWith("Must be");
        assertThat(page.select("#" + field).val()).isEqualTo(typed);
        assertThat(get(LAYOUT + "/tape-plan.svg?" + field + "=" + typed).statusCode())
                .isEqualTo(400);
        assertThat(get(LAYOUT + "/tape-plan.dxf?" + field + "=" + typed).statusCode())
                .isEqualTo(400);
    }
}
