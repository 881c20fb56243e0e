package org.vanewright.bench.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.vanewright.testing.ServerTest;

/** Calculators of flights as plain requests. */
class FlightPagesTest extends ServerTest {
    private static String figure(Document page, String label) {
        for (Element pair : page.select(".facts div")) {
            if (pair.select("dt").text().equals(label)) {
                return pair.select("dd").text().replace('\u00a0', ' ');
            }
        }
        return "no " + label;
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    /** D. Gray, Using GPS to Accurately Determine True Airspeed, 1998, worked example (quoted second-hand). */
    @Test
    void airspeedByGpsAgainstThePublishedExample() {
        Document page =
                page("/bench/gps-airspeed?directions=TRACKS&legs=" + encoded("140 192\n\n112, 283\n120;20"), 200);
        assertThat(figure(page, "True airspeed")).isEqualTo("130.0 kt");
        assertThat(figure(page, "Wind")).isEqualTo("20.6 kt from 315°");
        assertThat(figure(page, "Scatter of a leg")).contains("a fourth leg would show it");
        assertThat(page.select("tbody tr").get(0).text()).isEqualTo("1 140.0 192 199.7 0.00");
        assertThat(page.select("#validity").text()).contains("Inside the range");
    }

    @Test
    void linesThatCannotBeReadAreNamedByTheirPlace() {
        Document words = page("/bench/gps-airspeed?directions=TRACKS&legs=" + encoded("140 192\nfast north"), 400);
        assertThat(words.select("#legs-error").text()).contains("Line 2:", "fast north");
        assertThat(words.select("#legs").text()).contains("fast north");
        Document range =
                page("/bench/gps-airspeed?directions=HEADINGS&legs=" + encoded("140 192\n\n112 400\n120 20"), 400);
        assertThat(range.select("#legs-error").text()).contains("Line 3:", "400", "360");
        Document two = page("/bench/gps-airspeed?directions=HEADINGS&legs=" + encoded("140 192\n112 40"), 400);
        assertThat(two.select("#legs-error").text()).contains("3 to 500 legs");
        Document none = page("/bench/gps-airspeed?directions=&legs=", 400);
        assertThat(none.select("#form-problems li")).hasSize(2);
    }

    @Test
    void stallsHaveTheirBudget() {
        Document page = page(
                "/bench/stall-reduction?standardMassKg=500&resolutionKt=2&points="
                        + encoded("43 500 1 0.5\n42 500 1 1.5\n41.5 500 1 2"),
                200);
        assertThat(figure(page, "Stall speed at 1 kt/s")).startsWith("42.5 kt calibrated, 95 % interval");
        assertThat(figure(page, "Change with entry rate")).isEqualTo("-1.00 kt per kt/s");
        assertThat(figure(page, "Uncertainty: reading")).startsWith("0.58 kt, 100 %");
        assertThat(page.select("tbody tr")).hasSize(3);
        Document one = page("/bench/stall-reduction?standardMassKg=500&points=" + encoded("43 500"), 200);
        assertThat(figure(one, "Standard deviation of a stall")).isEqualTo("not known from one stall");
        Document bad = page(
                "/bench/stall-reduction?standardMassKg=&massKg=x&resolutionKt=-1&points=" + encoded("43 500"), 400);
        assertThat(bad.select("#massKg-error").text()).contains("a number such as");
        assertThat(page("/bench/stall-reduction?standardMassKg=&resolutionKt=&points=" + encoded("43 500"), 400)
                        .select("#standardMassKg-error")
                        .text())
                .isNotBlank();
        assertThat(page("/bench/stall-reduction?standardMassKg=500&resolutionKt=-1&points=" + encoded("43 500"), 400)
                        .select("#resolutionKt-error")
                        .text())
                .isNotBlank();
        assertThat(page("/bench/stall-reduction?standardMassKg=500&points=" + encoded("43 500\n999 500"), 400)
                        .select("#points-error")
                        .text())
                .contains("Line 2:", "400 kt");
    }

    @Test
    void comparisonsSayWhatFollowsFromTheNumbers() {
        Document changed = page(
                "/bench/comparison?baseline=43.1+42.6+44+43.5+42.9+43.8&modified=41.2+41.9+40.8+41.5+42.1+41", 200);
        assertThat(changed.select("#said").text())
                .startsWith("Lower by 1.9")
                .contains("95 % interval", "6 and 6 values");
        assertThat(changed.select("figure svg")).hasSize(1);
        Document same =
                page("/bench/comparison?confidence=90&baseline=43.1+42.6+44+43.5&modified=43.2+42.5+44.1+43.3", 200);
        assertThat(same.select("#said").text()).startsWith("No change seen; a change under ");
        assertThat(figure(same, "Numbers behind it")).contains("90 % interval");
        Document flat = page("/bench/comparison?baseline=43+43&modified=42+42", 400);
        assertThat(flat.select("#baseline-error").text()).contains("some differ");
        Document sure = page("/bench/comparison?confidence=100&baseline=43+44&modified=42+43", 400);
        assertThat(sure.select("#confidence-error").text()).contains("99.99");
    }

    /** J. Cohen, Statistical Power Analysis for the Behavioral Sciences, 1988 (from memory). */
    @Test
    void repeatsAgainstCohensTables() {
        Document page = page("/bench/sample-size?design=GROUPS&standardDeviation=1&difference=0.8", 200);
        assertThat(figure(page, "Values of each configuration")).isEqualTo("26");
        assertThat(figure(page, "Chance to see the change with as many")).isEqualTo("80.7 %");
        assertThat(page.select("figure svg")).hasSize(1);
        Document pairs = page("/bench/sample-size?design=PAIRS&standardDeviation=1&difference=1&power=90", 200);
        assertThat(figure(pairs, "Pairs")).isEqualTo("13");
    }

    @ParameterizedTest
    @CsvSource({
        "standardDeviation=0&difference=1, standardDeviation",
        "standardDeviation=1&difference=0, difference",
        "standardDeviation=1000000&difference=0.0001, difference",
        "standardDeviation=1&difference=1&power=4, power",
        "standardDeviation=1&difference=1&power=100, power",
        "standardDeviation=1&difference=1&significance=60, significance",
        "standardDeviation=wide&difference=1, standardDeviation",
        "standardDeviation=1, difference"
    })
    void whatIsWrongStandsBesideItsField(String query, String field) {
        Document page = page("/bench/sample-size?design=GROUPS&" + query, 400);
        assertThat(page.select("#" + field + "-error").text()).isNotBlank();
    }

    @Test
    void retentionOfTypedGroups() {
        Document page = page("/bench/retention?groups=" + encoded("Foam: 6 6 6 6+ 7 9+ 10\nFilm: 1 2; 3 4+"), 200);
        assertThat(figure(page, "Foam: lost")).isEqualTo("5 of 7");
        assertThat(figure(page, "Log-rank test")).startsWith("χ²");
        assertThat(page.select("figure svg")).hasSize(1);
        Document none = page("/bench/retention?confidence=90&groups=" + encoded("Foam: 25+ 25+"), 200);
        assertThat(figure(none, "Foam: half are left until")).isEqualTo("not reached");
        assertThat(figure(none, "Foam: lost at most")).startsWith("68.4 %");
        Document bad = page("/bench/retention?groups=" + encoded("Foam: 6 6\n\nFilm: soon"), 400);
        assertThat(bad.select("#groups-error").text()).contains("Line 3:", "soon");
        assertThat(page("/bench/retention?groups=" + encoded(": 6"), 400)
                        .select("#groups-error")
                        .text())
                .contains("Line 1:");
        assertThat(page("/bench/retention?groups=", 400).select("#groups-error").text())
                .isNotBlank();
        assertThat(page("/bench/retention?groups=" + encoded("Foam: -1"), 400)
                        .select("#groups-error")
                        .text())
                .isNotBlank();
    }
}
