package org.vanewright.retention.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.testing.ServerTest;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** How long devices stay on, as people and programs meet it. Groups are found by names of this test's own. */
class RetentionPagesTest extends ServerTest {
    private static final String DEMO = "pairs-over-the-taper-put-on-in-spring";

    private ObjectNode demo(String plural, String slug, String name) {
        JsonNode revision = json(get("/api/v1/" + plural + "/" + slug + "/revisions/1"), 200);
        ObjectNode content = (ObjectNode) revision.get("content");
        content.remove("provenance");
        return content.put("name", name).put("invented", false);
    }

    /** Put on with an adhesive that only this test has. */
    private String installed(String name, String adhesive) {
        ObjectNode document = demo("installations", DEMO, name);
        document.remove("adhesive");
        document.put("adhesiveClass", adhesive);
        String path = shipped("installations", document);
        return path.substring(path.lastIndexOf('/') + 1);
    }

    private String inspected(String installation, String name, String on, double hours, int... lostOnTheLeft) {
        ObjectNode document = demo("inspections", DEMO + "-inspection-1", name);
        document.putObject("installation").put("slug", installation).put("revision", 1);
        document.put("inspectedOn", on).put("hoursFlown", hours);
        ArrayNode losses = document.putArray("losses");
        for (int device : lostOnTheLeft) {
            losses.addObject()
                    .put("state", "MISSING")
                    .put("cause", device == 1 ? "KNOCKED" : "HEAT")
                    .putObject("at")
                    .put("surface", "Wing")
                    .put("wing", "LEFT")
                    .put("device", device);
        }
        return shipped("inspections", document);
    }

    private JsonNode group(String adhesive, String query) {
        for (JsonNode group : json(get("/api/v1/retention" + query), 200).get("groups")) {
            if (group.get("name").asString().equals(adhesive)) {
                return group;
            }
        }
        throw new AssertionError("no group " + adhesive);
    }

    @Test
    void nothingLostIsSaidInFullWithBothLimits() {
        for (int i = 1; i <= 3; i++) {
            String slug = installed("Kept " + i, "Kept tape");
            inspected(slug, "Kept look " + i, "2026-06-01", 25);
        }
        JsonNode group = group("Kept tape", "?by=ADHESIVE");
        assertThat(group.get("sentence").asString().replace('\u00a0', ' '))
                .isEqualTo(
                        "No device of 408 in 3 installations was lost in 25 h: at most 0.7 % are lost in that time, if each"
                                + " device has a fate of its own (95 %, one-sided; rule of three 0.7 %). If the devices of an"
                                + " installation share a fate, the next installation loses any with a chance of at most 63 %.");
        assertThat(group.get("curve")).isEmpty();
        assertThat(group.get("medianHours").isNull()).isTrue();
        assertThat(group.get("lookEveryHours").asDouble()).isBetween(1.0, 25.0);
    }

    @Test
    void lossesOpenToTheInspectionsThatFoundThem() {
        String one = installed("Lost 1", "Losing tape");
        String two = installed("Lost 2", "Losing tape");
        inspected(one, "Lost look 1", "2026-05-01", 10);
        String found = inspected(one, "Lost look 2", "2026-06-01", 25, 1, 2, 3, 4);
        inspected(two, "Lost look 3", "2026-06-01", 30, 5);
        JsonNode group = group("Losing tape", "?by=adhesive");
        assertThat(group.get("devices").asInt()).isEqualTo(272);
        assertThat(group.get("lost").asInt()).isEqualTo(5);
        JsonNode first = group.get("curve").get(0);
        assertThat(first.get("hours").asDouble()).isEqualTo(25);
        assertThat(first.get("survival").asDouble()).isCloseTo(268 / 272.0, within(1e-9));
        assertThat(first.get("installationLow").asDouble())
                .isLessThan(first.get("low").asDouble());
        // By hand: four lie in (10, 25], one in (0, 30] with the same place; five of 272, and none elsewhere.
        assertThat(group.get("intervals")).hasSize(1);
        assertThat(group.at("/intervals/0/afterHours").asDouble()).isEqualTo(10);
        assertThat(group.at("/intervals/0/byHours").asDouble()).isEqualTo(25);
        assertThat(group.at("/intervals/0/share").asDouble()).isCloseTo(5 / 272.0, within(1e-4));
        assertThat(group.get("basis")).hasSize(2);
        assertThat(group("Losing tape", "?count=NOT_HANDLING").get("lost").asInt())
                .isEqualTo(4);

        Document page = page("/retention?by=ADHESIVE", 200);
        assertThat(page.select("h2").eachText()).contains("Losing tape");
        assertThat(page.select("td details a").eachAttr("href")).contains(found + "/revisions/1");
        assertThat(page.select(".basis a").eachAttr("href")).contains("/installations/" + one + "/revisions/1");
        assertThat(page.select("svg.plot").size()).isGreaterThanOrEqualTo(1);
        assertThat(page.text()).contains("before each flight").doesNotContain("NaN");
        List<String> csv = get("/retention.csv?by=ADHESIVE").body().lines().toList();
        assertThat(csv.get(0)).startsWith("group,installation,installation_revision,invented,surface,wing,device");
        assertThat(csv)
                .contains("Losing tape," + one + ",1,false,Wing,LEFT,2,Centre panel,10.0,25.0,MISSING,HEAT,"
                        + found.substring("/inspections/".length()) + ",1")
                .contains("Losing tape," + two + ",1,false,Wing,LEFT,2,Centre panel,30.0,,,,,");
    }

    @Test
    void inventedOnesAreLeftOutBesideOthersUnlessAskedFor() {
        String slug = installed("Real", "Real tape");
        inspected(slug, "Real look", "2026-06-01", 12);
        JsonNode without = json(get("/api/v1/retention"), 200);
        assertThat(without.get("invented").asBoolean()).isFalse();
        assertThat(page("/retention", 200).select(".note").text()).contains("left out");
        JsonNode with = json(get("/api/v1/retention?invented=true"), 200);
        assertThat(with.get("invented").asBoolean()).isTrue();
        assertThat(with.get("groups").size())
                .isGreaterThan(without.get("groups").size());
        assertThat(page("/retention?invented=true", 200).select(".invented")).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"ROW", "row", "FINISH", "MATERIAL", "ALL"})
    void groupsOfEveryKindAreShown(String by) {
        assertThat(page("/retention?invented=true&by=" + by, 200).select("h2").size())
                .isGreaterThan(2);
        assertThat(json(get("/api/v1/retention?invented=true&by=" + by), 200)
                        .get("groups")
                        .size())
                .isPositive();
    }

    @ParameterizedTest
    @ValueSource(strings = {"by=WING", "count=SOME", "by='%20or%201=1", "by=%00", "by=%3Cscript%3E"})
    void whatCannotBeReadIsNamed(String query) {
        String field = query.substring(0, query.indexOf('='));
        assertThat(json(get("/api/v1/retention?" + query), 400)
                        .at("/errors/0/field")
                        .asString())
                .isEqualTo(field);
        assertThat(page("/retention?" + query, 400)
                        .select("#" + field + "-error")
                        .text())
                .contains("one of the choices");
        assertThat(get("/retention.csv?" + query).statusCode()).isEqualTo(400);
    }
}
