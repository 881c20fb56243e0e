package org.vanewright.campaign.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.testing.ServerTest;
import tools.jackson.databind.node.ObjectNode;

class ComparePagesTest extends ServerTest {
    private static final String SLUG = "clean-stall-with-pairs-over-the-taper";
    private static final String DEMO = SLUG + "@1.B";

    /** The demonstration with every stall of the fitted aircraft one knot lower; gives its slug. */
    private String another() {
        ObjectNode document = (ObjectNode)
                json(get("/api/v1/campaigns/" + SLUG + "/revisions/1"), 200).get("content");
        document.put("name", "Another campaign").put("invented", false);
        document.get("points").forEach(point -> {
            if (point.get("configuration").asString().equals("B")) {
                ((ObjectNode) point)
                        .put(
                                "indicatedAirspeedKt",
                                point.get("indicatedAirspeedKt").asDouble() - 1);
            }
        });
        return shipped("campaigns", document).replace("/campaigns/", "");
    }

    @Test
    void configurationsOfTwoCampaignsStandSideBySide() {
        String other = another() + "@1.B";
        Document page = page("/compare?of=" + DEMO + "&of=" + other, 200);
        assertThat(page.select("tbody").get(0).select("tr")).hasSize(2);
        assertThat(page.select(".note").text()).contains("no test here compares one campaign with another");
        assertThat(page.select("input[checked]").eachAttr("value")).contains(DEMO, other);
        assertThat(page.select("svg.plot")).hasSize(1);
        assertThat(page.text()).doesNotContain("NaN").contains("Fieller");
        assertThat(page.select("svg.plot").get(0).select("text").eachText())
                .as("places in the table are whole numbers")
                .contains("1", "2")
                .doesNotContain("0.5", "1.0", "1.5");
    }

    @Test
    void theTableHasTheSameFiguresForPrograms() {
        String csv = get("/compare.csv?of=" + DEMO).body();
        List<String> lines = csv.lines().toList();
        List<String> names = List.of(lines.get(0).split(",", -1));
        String[] cells = lines.get(1).split(",", -1);
        double mean = Double.parseDouble(cells[names.indexOf("baseline_mean")]);
        double change = Double.parseDouble(cells[names.indexOf("change")]);
        assertThat(Double.parseDouble(cells[names.indexOf("change_percent")]))
                .isEqualTo(100 * change / mean, within(0.001));
        assertThat(Double.parseDouble(cells[names.indexOf("lift_coefficient_change")]))
                .as("grows with the inverse square of the stall speed")
                .isBetween(0.1, 0.25);
        assertThat(cells[names.indexOf("measure")]).isEqualTo("STALL_SPEED");
    }

    @Test
    void whatALayoutCameToIsFoundByItsName() {
        assertThat(page("/compare?layout=low-wing-pairs-over-the-taper", 200)
                        .select("tbody tr")
                        .text())
                .contains("B: Pairs over the taper");
        assertThat(page("/compare?layout=%25", 200).select("#table-title")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"nothing", SLUG + "@9.B", SLUG + "@1.A", SLUG + "@1.Z", "%00", "a@1.B%27%20or%201=1"})
    void whatCannotBeComparedIsNamed(String reference) {
        assertThat(page("/compare?of=" + reference, 400).select("[role=alert]").text())
                .contains("allowed is");
        assertThat(get("/compare.csv?of=" + reference).statusCode()).isEqualTo(400);
    }

    @Test
    void noMoreThanCanBeReadAreComparedAtOnce() {
        String many = ("&of=" + DEMO).repeat(13);
        assertThat(page("/compare?" + many.substring(1), 400).text()).contains("at most 12 configurations");
    }
}
