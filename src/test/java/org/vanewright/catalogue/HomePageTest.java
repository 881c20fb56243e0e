package org.vanewright.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.vanewright.testing.ServerTest;

class HomePageTest extends ServerTest {
    @Test
    void leadsThroughTheJobAndShowsWhatIsNew() {
        Document page = page("/", 200);
        assertThat(page.select("head title").eachText()).containsExactly("Vanewright: small vanes for slow aircraft");
        assertThat(page.select(".steps h3").eachText())
                .containsExactly(
                        "Describe a wing", "Pick or design a device", "Lay out a row", "Print and place", "Fly");
        assertThat(page.select(".news li")).isNotEmpty();
        assertThat(page.select(".caution li")).hasSize(7);
        assertThat(page.text()).doesNotContain("??", "''");
        assertThat(page.select(".open-note")).as("editing is open to nobody").isEmpty();
        assertThat(page.select(".masthead a[href=/sign-in]").text()).isEqualTo("Sign in");
    }
}
