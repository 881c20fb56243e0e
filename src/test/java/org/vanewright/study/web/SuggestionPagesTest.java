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
    }

    @Test
    void onlyTheChosenRecommendationsCountAndThePersonsLimitsHold() {
        Document page = page(PATH + "?leastFraction=0.1&mostFraction=0.12&use.practiceangle=true", 200);

        assertThat(scores(page)).allMatch(s -> s == 1.0);
        assertThat(page.select(".suggestions td").eachText()).contains("1 of 1");
        assertThat(page.select(".suggestions h3").eachText()).allMatch(t -> t.contains(" at 1"));
        assertThat(page.select("input[type=checkbox][checked]")).hasSize(1);
    }

    @Test
    void aSuggestionBecomesADraftOfItsOwn() {
        SignedIn member = signIn(Role.MEMBER);
        Element form = member.page(PATH, 200).select(".suggestions form").get(0);
        Map<String, String> fields = new LinkedHashMap<>();
        form.select("input[name]").forEach(i -> fields.put(i.attr("name"), i.attr("value")));
        fields.remove("_csrf");

        String draft = URI.create(member.postForm(PATH, fields)
                        .headers()
                        .firstValue("Location")
                        .orElseThrow())
                .getPath();
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
        assertThat(member.page("/drafts", 200).select(".drafts > li")).isEmpty();
    }
}
