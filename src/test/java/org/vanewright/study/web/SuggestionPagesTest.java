package org.vanewright.study.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.vanewright.account.Role;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;

/** Rows that meet recommendations, and the draft that is made of one. */
class SuggestionPagesTest extends ServerTest {
    private static final String PATH = "/layouts/high-wing-one-row-co-rotating/revisions/1/suggestions";

    private static List<Double> scores(Document page) {
        return page.select(".suggestions > li > p strong").eachText().stream()
                .map(Double::valueOf)
                .toList();
    }

    @Test
    void suggestionsAreRankedExplainedAndCalledAStartingPoint() {
        Document page = page(PATH, 200);

        List<Double> scores = scores(page);
        assertThat(scores).hasSizeBetween(1, 8).isSortedAccordingTo((a, b) -> Double.compare(b, a));
        assertThat(scores).allSatisfy(s -> assertThat(s).isBetween(0.0, 1.0));
        assertThat(page.select(".suggestions tbody tr")).hasSize(3 * scores.size());
        assertThat(page.text()).contains("never a result", "Sign in to make a draft", "Before anything is fitted");
        assertThat(page.text()).doesNotContain("NaN");
        assertThat(page.select("input[type=checkbox]:not([checked])")).isEmpty();
        assertThat(page.select(".trade tbody tr")).hasSameSizeAs(scores);
        List<String> missed = page.select(".missed li").eachText();
        assertThat(missed).isNotEmpty().allMatch(m -> m.contains("“") && m.matches(".*(above|below) by .*"));
        assertThat(page.select(".missed").text()).doesNotContain("lin-", "godard-", "practice-", "wendt-");
    }

    private static List<Double> column(Document page, int number) {
        return page.select(".trade tbody td:nth-child(" + number + ")").eachText().stream()
                .map(t -> Double.valueOf(t.replaceAll("[^0-9.]", "")))
                .toList();
    }

    @Test
    void pitchAndAngleStayWithinLimits() {
        Document page = page(PATH + "?leastPitchMm=63&mostPitchMm=66&leastAngleDeg=13&mostAngleDeg=14", 200);

        assertThat(column(page, 4))
                .isNotEmpty()
                .allSatisfy(pitch -> assertThat(pitch).isBetween(63.0, 66.0));
        assertThat(column(page, 5)).allSatisfy(angle -> assertThat(angle).isBetween(13.0, 14.0));
    }

    @Test
    void onlyTheDevicesThatAreTickedAreTried() {
        Document page = page(PATH + "?tried=rectangular-vane-8-by-20", 200);

        assertThat(column(page, 2)).isNotEmpty().containsOnly(8.0);
        assertThat(page.select(".suggestions h3 a").eachAttr("href"))
                .allMatch(href -> href.contains("/devices/rectangular-vane-8-by-20/"));
        assertThat(scores(page)).hasSizeLessThanOrEqualTo(3);
        assertThat(page.select("input[name=tried][checked]")).hasSize(1);
    }

    @Test
    void pairsOnOneBaseAreTriedWithTheirOwnAngle() {
        Document all = page(PATH, 200);
        List<String> pairs =
                all.select(".licence-choice:contains(a pair on one base) input").eachAttr("value");
        assertThat(pairs).isNotEmpty();
        Document page = page(PATH + "?tried=" + pairs.get(0), 200);

        assertThat(page.select(".suggestions li.row-block")).isNotEmpty();
        assertThat(page.select(".suggestions").text()).contains("the pair’s own");
        SignedIn member = signIn(Role.MEMBER);
        Document draft = member.page(draftOfTheFirst(member, PATH + "?tried=" + pairs.get(0)), 200);
        assertThat(draft.select("#rows-0-device option[selected]").attr("value"))
                .contains(pairs.get(0));
        assertThat(draft.select("#rows-0-angleDeg").val()).isEmpty();
        assertThat(draft.select("#rows-0-arrangement option[selected], [name='rows[0].arrangement'][checked]")
                        .attr("value"))
                .startsWith("COMMON_FLOW");
    }

    @Test
    void keepOutsAreHeededAndNamed() {
        Document page = page(PATH, 200);
        assertThat(page.select(".suggestions li.row-block > p").eachText()).allMatch(t -> t.contains("find a place"));
        assertThat(column(page, 8)).allSatisfy(devices -> assertThat(devices).isPositive());
    }

    @Test
    void onlyTheChosenRecommendationsCountAndThePersonsLimitsHold() {
        Document page = page(PATH + "?leastFraction=0.1&mostFraction=0.12&use.practiceangle=true", 200);

        assertThat(scores(page)).allMatch(s -> s == 1.0);
        assertThat(page.select(".suggestions td").eachText()).contains("1 of 1");
        assertThat(page.select(".suggestions h3").eachText()).allMatch(t -> t.contains(" at 1"));
        assertThat(page.select("input[name^=use][checked]")).hasSize(1);
    }

    private static Map<String, String> fieldsOfTheFirst(SignedIn member, String path) {
        Element form = member.page(path, 200).select(".suggestions form").get(0);
        Map<String, String> fields = new LinkedHashMap<>();
        form.select("input[name]").forEach(i -> fields.put(i.attr("name"), i.attr("value")));
        fields.remove("_csrf");
        return fields;
    }

    private static String draftOfTheFirst(SignedIn member, String path) {
        return URI.create(member.postForm(PATH, fieldsOfTheFirst(member, path))
                        .headers()
                        .firstValue("Location")
                        .orElseThrow())
                .getPath();
    }

    @Test
    void aSuggestionBecomesADraftOfItsOwn() {
        SignedIn member = signIn(Role.MEMBER);
        Map<String, String> fields = fieldsOfTheFirst(member, PATH);
        String draft = draftOfTheFirst(member, PATH);
        Document page = member.page(draft, 200);
        assertThat(Double.parseDouble(page.select("#rows-0-chordFraction").val()))
                .isEqualTo(Double.parseDouble(String.valueOf(fields.get("chordFraction"))));
        assertThat(Double.parseDouble(page.select("#rows-0-pitchMm").val()))
                .isEqualTo(Double.parseDouble(String.valueOf(fields.get("pitchMm"))));
        assertThat(page.select("#rows-0-device option[selected]").attr("value")).contains(fields.get("device"));
        assertThat(page.text()).contains("started from high-wing-one-row-co-rotating, revision 1");
    }

    @ParameterizedTest
    @CsvSource({
        "row=9, row",
        "row=x, row",
        "leastFraction=0.3&mostFraction=0.2, mostFraction",
        "leastFraction=5, leastFraction",
        "leastPitchMm=90&mostPitchMm=60, mostPitchMm",
        "leastPitchMm=1, leastPitchMm",
        "mostAngleDeg=80, mostAngleDeg",
        "leastAngleDeg=x, leastAngleDeg",
        "massKg=99999, massKg",
        "pressureAltitudeFt=NaN, pressureAltitudeFt"
    })
    void badLimitsAreNamed(String query, String field) {
        Document page = page(PATH + "?" + query, 400);
        assertThat(page.select("#form-problems li").eachAttr("data-field")).contains(field);
        assertThat(page.select(".suggestions")).isEmpty();
    }

    @Test
    void aDraftThatCannotBeReadIsNotBegun() {
        SignedIn member = signIn(Role.MEMBER);
        assertThat(member.postForm(PATH, Map.of("row", "0", "chordFraction", "x"))
                        .statusCode())
                .isEqualTo(400);
        assertThat(member.postForm(
                                PATH, Map.of("row", "7", "device", "a", "deviceRevision", "1", "chordFraction", "0.1"))
                        .statusCode())
                .isEqualTo(400);
        assertThat(member.postForm(
                                PATH, Map.of("row", "0", "device", "a", "deviceRevision", "1", "chordFraction", "0.1"))
                        .statusCode())
                .isEqualTo(400);
        assertThat(member.page("/drafts", 200).select(".drafts > li")).isEmpty();
    }
}
