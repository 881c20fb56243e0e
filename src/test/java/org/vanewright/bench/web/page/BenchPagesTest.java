package org.vanewright.bench.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.testing.ServerTest;

/** Calculators as plain requests. */
class BenchPagesTest extends ServerTest {
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

    @Test
    void theBenchIsReachedFromEveryPageAndListsItsCalculators() {
        assertThat(page("/", 200).select(".masthead a, main a").eachAttr("href"))
                .filteredOn("/bench"::equals)
                .hasSize(2);
        Document bench = page("/bench", 200);
        assertThat(bench.select(".masthead a[aria-current=page]").text()).isEqualTo("Bench");
        assertThat(bench.select(".card a").eachAttr("href"))
                .containsExactly(
                        "/bench/section",
                        "/bench/flow",
                        "/bench/atmosphere",
                        "/bench/airspeed",
                        "/bench/flat-plate",
                        "/bench/vane",
                        "/bench/gps-airspeed",
                        "/bench/stall-reduction",
                        "/bench/comparison",
                        "/bench/sample-size",
                        "/bench/bond",
                        "/bench/retention");
        assertThat(get("/bench/polar").statusCode()).isEqualTo(404);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "section",
                "flow",
                "atmosphere",
                "airspeed",
                "flat-plate",
                "vane",
                "gps-airspeed",
                "stall-reduction",
                "comparison",
                "sample-size"
            })
    void eachShowsAnExampleWithMethodSourcesAndAnAddressToShare(String name) {
        Document page = page("/bench/" + name, 200);
        assertThat(page.select("#result-title").text()).isEqualTo("An example");
        assertThat(page.select(".facts dd").eachText()).isNotEmpty().noneMatch(t -> t.contains("NaN"));
        assertThat(page.select("#method").text()).isNotBlank();
        assertThat(page.select("#sources li")).isNotEmpty();
        assertThat(page.select("#validity")).hasSize(1);
        assertThat(page.select("main .caution").text()).contains("nothing here is an approval");
        assertThat(page.select("[style], script:not([src]):not([type$=json]), style"))
                .isEmpty();
        String address = page.select(".share a").attr("href");
        assertThat(address).startsWith("/bench/" + name + "?");
        Document shared = page(address, 200);
        assertThat(shared.select("#result-title").text()).isEqualTo("Result");
        assertThat(shared.select(".facts dd").eachText())
                .isEqualTo(page.select(".facts dd").eachText());
        assertThat(shared.select(".share a").attr("href")).isEqualTo(address);
    }

    @Test
    void atmosphereInEitherSystemAgainstThePublishedTable() {
        // U.S. Standard Atmosphere 1976: sea level
        Document sea = page("/bench/atmosphere?pressureAltitudeFt=0", 200);
        assertThat(figure(sea, "Density")).isEqualTo("1.225 kg/m³");
        assertThat(figure(sea, "Pressure")).isEqualTo("1013.3 hPa");
        assertThat(figure(sea, "Temperature")).isEqualTo("15 °C");
        assertThat(figure(sea, "Kinematic viscosity")).isEqualTo("14.61 mm²/s");
        Document us = parsed(get("/bench/atmosphere?pressureAltitudeFt=0", "Cookie", "units=us"), 200);
        assertThat(figure(us, "Density")).isEqualTo("0.07647 lb/ft³");
        assertThat(figure(us, "Pressure")).isEqualTo("29.92 inHg");
        assertThat(figure(us, "Temperature")).isEqualTo("59 °F");
    }

    @Test
    void airspeedTakesOneOfThreeAndSaysSo() {
        Document sea = page("/bench/airspeed?pressureAltitudeFt=0&calibratedAirspeedKt=60", 200);
        assertThat(figure(sea, "True airspeed")).isEqualTo("60.0 kt");
        Document both = page("/bench/airspeed?pressureAltitudeFt=0&calibratedAirspeedKt=60&trueAirspeedKt=70", 400);
        assertThat(both.select("#trueAirspeedKt-error").text()).contains("only one of the three");
        assertThat(both.select("#trueAirspeedKt").attr("value")).isEqualTo("70");
        Document none = page("/bench/airspeed?pressureAltitudeFt=0", 400);
        assertThat(none.select("#calibratedAirspeedKt-error").text()).contains("one of the other two");
    }

    @Test
    void sectionHasItsOutlineAndStations() {
        Document page = page("/bench/section?naca=0012&stationsPercent=0+30+100", 200);
        assertThat(figure(page, "Largest thickness")).isEqualTo("12 % of the chord");
        assertThat(figure(page, "Largest camber")).isEqualTo("none, symmetric");
        // Abbott, von Doenhoff, Stivers, NACA Report 824, 1945: NACA 0012, 6.002 % at 30 % (from memory)
        assertThat(page.select("tbody tr").get(1).text()).startsWith("30 6.00").contains("-6.00");
        assertThat(page.select("svg.section desc").text()).contains("NACA 0012");
        assertThat(page("/bench/section?naca=0012&stationsPercent=0+half", 400)
                        .select("#stationsPercent-error")
                        .text())
                .contains("numbers parted by blanks");
        assertThat(page("/bench/section?naca=0012&stationsPercent=0+130", 400)
                        .select("#stationsPercent-error")
                        .text())
                .contains("from 0 to 100");
    }

    @Test
    void coordinatesArePastedAndReadLikeThoseOfAirframes() {
        String ellipse = IntStream.rangeClosed(0, 60)
                .mapToObj(i -> 2 * Math.PI * i / 60)
                .map(a -> String.format(Locale.ROOT, "%.5f %.5f", 0.5 + 0.5 * Math.cos(a), 0.06 * Math.sin(a)))
                .collect(Collectors.joining("\r\n"));
        Document page = page("/bench/section?kind=COORDINATES&coordinates=" + encoded(ellipse), 200);
        assertThat(figure(page, "Largest thickness")).isEqualTo("12 % of the chord");
        assertThat(page.select("#kind-COORDINATES").hasAttr("checked")).isTrue();
        assertThat(page(page.select(".share a").attr("href"), 200)
                        .select("#coordinates")
                        .text())
                .startsWith("1.00000 0.00000");
        Document bad = page("/bench/flow?coordinates=" + encoded("1 0\n0.5 up\n0 0"), 400);
        assertThat(bad.select("#coordinates-error").text()).contains("ine 2").contains("0.5 up");
        assertThat(bad.select("#coordinates").text()).contains("0.5 up");
        Document long16k = page("/bench/section?kind=COORDINATES&coordinates=" + "1+0%0A".repeat(5000), 400);
        assertThat(long16k.select("#coordinates-error").text()).contains("16000 characters");
    }

    @Test
    void flowShowsCurvesWithTablesAndWhatIsMarked() {
        Document page = page(
                "/bench/flow?naca=0012&angleOfAttackDeg=8.30&reynolds=6000000"
                        + "&transition.upperX=0.05&transition.lowerX=0.05",
                200);
        // C. L. Ladson, NASA TM 4074, 1988, grit 80, M 0.15, Re 6e6: lift 0.8873 and drag 0.01050 at 8.30°
        assertThat(Double.parseDouble(figure(page, "Lift coefficient"))).isBetween(0.87, 0.905);
        assertThat(Double.parseDouble(figure(page, "Profile drag coefficient"))).isBetween(0.0097, 0.0113);
        assertThat(figure(page, "Transition, lower side")).isEqualTo("5.0 % of the chord");
        assertThat(figure(page, "Separation, upper side")).isEqualTo("none, attached");
        assertThat(page.select("svg.plot")).hasSize(4);
        assertThat(page.select("svg.plot title").eachText())
                .containsExactly(
                        "Pressure coefficient along the chord",
                        "Speed along the chord",
                        "Thickness of the boundary layers along the chord",
                        "Shape factor along the chord");
        assertThat(page.select(".plot-table table"))
                .hasSize(4)
                .allSatisfy(table -> assertThat(table.select("tbody tr")).hasSizeGreaterThan(40));
        assertThat(page.select("svg.plot").text()).contains("upper transition");
        assertThat(page.select("svg.section desc").text()).contains("lower side turns turbulent at 5.0");
    }

    @Test
    void separatedFlowIsShownButNotClaimed() {
        Document page = page("/bench/flow?naca=0012&angleOfAttackDeg=18&reynolds=3000000", 200);
        assertThat(figure(page, "Profile drag coefficient")).isEqualTo("not claimed");
        assertThat(figure(page, "Separation, upper side")).endsWith("% of the chord");
        assertThat(page.select("#validity").text()).contains("not claimed");
        assertThat(page.select("svg.plot").text()).contains("upper separation");
        Document bare = page("/bench/flow?naca=0012&liftCoefficient=0.5&inviscid=true", 200);
        assertThat(bare.select("svg.plot")).hasSize(2);
        assertThat(bare.select(".facts dt").eachText()).doesNotContain("Profile drag coefficient");
    }

    @Test
    void flatPlateAndVaneInKnotsAndMillimetres() {
        Document plate =
                page("/bench/flat-plate?speedKt=38.87689&distanceMm=500&kinematicViscosityMm2S=10&regime=LAMINAR", 200);
        // H. Blasius, 1908: at Re 1e6, δ = 4.910 thousandths of the distance
        assertThat(figure(plate, "Reynolds number of the distance")).isEqualTo("1,000,000");
        assertThat(figure(plate, "Thickness, to 99 % of the speed")).isEqualTo("2.45 mm");
        Document vane = page(
                "/bench/vane?heightMm=5&lengthMm=10&angleDeg=15&edgeSpeedKt=58.3153&boundaryLayerThicknessMm=5", 200);
        // Wendt's fit, NASA/CR-2001-211144, 2001, recomputed: 0.0815 m²/s at 30 m/s
        assertThat(figure(vane, "Circulation")).isEqualTo("0.0815 m²/s");
        assertThat(vane.select("#validity li")).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "atmosphere | pressureAltitudeFt | NaN",
                "atmosphere | pressureAltitudeFt | 1e999",
                "atmosphere | pressureAltitudeFt | 999999999999",
                "atmosphere | outsideAirTemperatureC | <script>alert(1)</script>",
                "airspeed | calibratedAirspeedKt | -Infinity",
                "airspeed?pressureAltitudeFt=0 | impactPressurePa | -5",
                "flat-plate | speedKt | 0",
                "flat-plate | regime | CALM",
                "flat-plate | kinematicViscosityMm2S | 0",
                "vane | edgeSpeedKt | 9999",
                "vane | angleDeg | \"><img src=x onerror=alert(1)>",
                "section | naca | 24<b>",
                "section | trailingEdge | ROUND",
                "section | stationsPercent | NaN",
                "flow | reynolds | 1e6",
                "flow | panels | 100.5",
                "flow | panels | 999999999999",
                "flow | transition.upperX | 7",
                "flow | angleOfAttackDeg | 90",
                "flow | liftCoefficient | x"
            })
    void badInputIsAnsweredBesideItsField(String name, String field, String typed) {
        Document page = page("/bench/" + name + (name.contains("?") ? "&" : "?") + field + "=" + encoded(typed), 400);
        String id = field.replace('.', '-');
        assertThat(page.select("#" + id + "-error").text()).startsWith("Must be ");
        assertThat(page.select("#form-problems a").eachAttr("href")).contains("#" + id);
        assertThat(page.select("#result")).isEmpty();
        Element input = page.select("[name='" + field + "']").get(0);
        assertThat(input.tagName().equals("input") && !input.attr("type").equals("radio"))
                .as("a field of text keeps it")
                .isEqualTo(typed.equals(input.attr("value")));
        assertThat(page.select("main script, main img, main b")).isEmpty();
    }

    @Test
    void anAddressWithNothingInItsFieldsAsksForThem() {
        Document page = page("/bench/vane?heightMm=&lengthMm=&angleDeg=&edgeSpeedKt=&boundaryLayerThicknessMm=", 400);
        assertThat(page.select("#form-problems li")).hasSize(5);
        assertThat(page.select("#form-problems h2").text()).startsWith("5 fields");
    }
}
