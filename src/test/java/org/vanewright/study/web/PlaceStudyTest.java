package org.vanewright.study.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.vanewright.testing.ServerTest;

/** Studies of a place on a wing that carries no row. */
class PlaceStudyTest extends ServerTest {
    private static final String PATH = "/airframes/quillmere-strut-braced-high-wing/study";

    private static String fact(Document page, String name) {
        Element found = page.select("#study-result dt").stream()
                .filter(dt -> dt.text().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + name));
        return String.valueOf(found.nextElementSibling())
                .replaceAll("<[^>]*>", "")
                .strip();
    }

    private static double number(Document page, String name) {
        return Double.parseDouble(fact(page, name).replaceAll("[^0-9.]", ""));
    }

    @Test
    void withoutADeviceTheLayerIsShownAndNothingIsRecommended() {
        Document page = page(PATH + "?condition=CRUISE", 200);

        assertThat(number(page, "Boundary layer, 99 %")).isBetween(0.1, 10.0);
        assertThat(page.select("svg.section[role=img]")).hasSize(1);
        assertThat(page.select("[role=note]").text()).contains("One section at one span station");
        assertThat(page.select(".guidance")).isEmpty();
        assertThat(page.select(".along tbody tr")).isNotEmpty();
        assertThat(page.text()).contains("approves nothing", "Before anything is fitted", "Invented");
        assertThat(page.text()).doesNotContain("NaN", "Infinity");
        assertThat(page.select("[id]").eachAttr("id")).doesNotHaveDuplicates();
    }

    @Test
    void aDeviceOfThatHeightIsSeenInTheLayerBesideRecommendations() {
        Document page = page(PATH + "?condition=CRUISE&heightMm=6", 200);
        double thickness = number(page, "Boundary layer, 99 %");

        assertThat(number(page, "Height over thickness") * thickness).isBetween(5.0, 7.0);
        assertThat(page.select("svg.section[role=img]")).hasSize(2);
        assertThat(page.select(".guidance tbody tr")).hasSizeGreaterThan(5);
        List<String> found = page.select(".guidance tr")
                .select("th:contains(Length over height) ~ td:nth-child(3)")
                .eachText();
        assertThat(found).isNotEmpty().containsOnly("2.50");
    }

    @Test
    void furtherBackTheLayerIsThickerAndTheLowerSideIsAnother() {
        double front = number(page(PATH + "?condition=CRUISE&chordFraction=0.06", 200), "Boundary layer, 99 %");
        double rear = number(page(PATH + "?condition=CRUISE&chordFraction=0.6", 200), "Boundary layer, 99 %");
        assertThat(rear).isGreaterThan(front);
        Document lower = page(PATH + "?condition=CRUISE&chordFraction=0.6&side=LOWER", 200);
        assertThat(number(lower, "Boundary layer, 99 %")).isNotEqualTo(rear);
    }

    @Test
    void thePageOfTheAirframeLeadsToEachSurface() {
        Document airframe = page("/airframes/quillmere-strut-braced-high-wing", 200);
        List<String> links = airframe.select("a[href*=/study]").eachAttr("href");
        assertThat(links).isNotEmpty();
        for (String link : links) {
            page(link, 200);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "part=9.0, part",
        "part=wing, part",
        "part=0.99, part",
        "stationMm=99999, stationMm",
        "stationMm=x, stationMm",
        "side=LEFT, side",
        "heightMm=0, heightMm",
        "chordFraction=NaN, chordFraction",
        "condition=SPEED, calibratedAirspeedKt",
        "revision=x, revision"
    })
    void badPlacesAreNamedBesideTheirField(String query, String field) {
        Document page = page(PATH + "?" + query, 400);
        assertThat(page.select("#form-problems li").eachAttr("data-field")).contains(field);
        assertThat(page.select("svg")).hasSize(1);
    }
}
