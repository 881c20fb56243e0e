package org.vanewright.adhesive.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.vanewright.account.Role;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;

/** Adhesives as people meet them. */
class AdhesivePagesTest extends ServerTest {
    private static final String STRONG = "/adhesives/foam-tape-30-pound-pack";

    @Test
    void theListHoldsTheInventedClasses() {
        Document page = page("/adhesives", 200);
        assertThat(page.select("h1").text()).isEqualTo("Adhesives");
        assertThat(page.select("nav [aria-current=page]").text()).isEqualTo("Adhesives");
        assertThat(page.text()).contains("which is not a strength", "No brands");
    }

    @Test
    void aPageSaysWhatThePackMeansAndWhatIsCommonPractice() {
        Document page = page(STRONG, 200);
        assertThat(page.text())
                .contains(
                        "Invented.",
                        "17 N/cm (9.71 lb/in)",
                        "560 kPa (81.2 psi)",
                        "ASTM D3330",
                        "30 pounds",
                        "area",
                        "time",
                        "temperature",
                        "direction",
                        "the stronger is preferred",
                        "Tape is stuck to the base first",
                        "No finger touches");
        assertThat(page.select("section:has(#practice)").text()).contains("common practice, no source");
        assertThat(page.select("[id]").eachAttr("id")).doesNotHaveDuplicates();
        assertThat(page.select("#trials a[href^=/layouts/]").attr("href")).contains("/bond?adhesive=foam-tape-30");
        assertThat(page("/adhesives/clear-gel-like-tape", 200).text()).contains("hard to trim", "not stated");
    }

    private Map<String, String> fields() {
        Map<String, String> fields = new HashMap<>();
        fields.put("action", "save");
        fields.put("name", "Foam from the shed");
        fields.put("carrier", "FOAM");
        fields.put("thicknessMm", "1");
        fields.put("peel.strengthNPerCm", "10");
        fields.put("peel.unit", "LBF_PER_IN");
        fields.put("peel.method", "ASTM_D3330");
        fields.put("shear.strengthKPa", "60");
        fields.put("shear.unit", "PSI");
        fields.put("shear.method", "NOT_STATED");
        return fields;
    }

    @Test
    void strengthsAreTypedInTheUnitOfTheDataSheet() {
        SignedIn member = signIn(Role.MEMBER);
        HttpResponse<String> saved = member.postForm("/adhesives/new", fields());
        assertThat(saved.statusCode()).as(saved.body()).isEqualTo(303);
        Document draft =
                member.page(saved.headers().firstValue("Location").orElseThrow().replace(origin(), ""), 200);
        // by definition: 10 lb/in is 17.51268 N/cm, 60 psi is 413.685 kPa
        assertThat(Double.parseDouble(draft.select("#peel-strengthNPerCm").val()))
                .isBetween(17.512683, 17.512684);
        assertThat(Double.parseDouble(draft.select("#shear-strengthKPa").val())).isBetween(413.6854, 413.6855);
        assertThat(draft.select("#peel-unit option[selected]").val()).isEqualTo("N_PER_CM");
        assertThat(draft.select("#preview").text()).contains("17.5 N/cm (10 lb/in)");
    }

    @ParameterizedTest
    @CsvSource({
        "thicknessMm, thick, thicknessMm",
        "peel.strengthNPerCm, 1e9, peel-strengthNPerCm",
        "peel.unit, STONE_PER_ELL, peel-unit",
        "peel.method, <script>, peel-method",
        "carrier, RUBBER, carrier"
    })
    void whatCannotBeReadStaysBesideItsMessage(String field, String typed, String id) {
        Map<String, String> fields = fields();
        fields.put(field, typed);
        Document page = parsed(signIn(Role.MEMBER).postForm("/adhesives/new", fields), 422);
        assertThat(page.select("#" + id + "-error").text()).startsWith("Must be");
        assertThat(page.select("#name").val()).isEqualTo("Foam from the shed");
    }

    @Test
    void revisionsAreComparedFieldByField() {
        Document page = page(STRONG + "/compare?from=1&to=1", 200);
        assertThat(page.select("h1").text()).isNotBlank();
        assertThat(page(STRONG + "/history", 200).text()).contains("Revision 1");
    }
}
