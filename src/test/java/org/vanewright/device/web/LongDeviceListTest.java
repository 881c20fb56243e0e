package org.vanewright.device.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.springframework.test.context.TestPropertySource;
import org.vanewright.testing.ServerTest;

/** More devices than one page of the list holds, in a service of its own so that no other test meets them. */
@TestPropertySource(properties = "spring.application.name=vanewright-with-a-long-list")
class LongDeviceListTest extends ServerTest {
    private static final String DEMO = "/devices/rectangular-vane-8-by-20";

    @Test
    void aLongListGoesOnOverOlderPagesUntilItEnds() {
        String design = json(get("/api/v1" + DEMO), 200).get("content").toString();
        for (int i = 1; i <= 13; i++) {
            shipped("devices", mapper().readTree(design.replace("Rectangular vane 8 by 20", "Paged vane " + i)));
        }
        Document newest = page("/devices", 200);
        assertThat(newest.select(".card")).hasSize(12);
        assertThat(newest.select("nav.paging a").eachText()).containsExactly("Older devices");
        Document older = page(newest.select("nav.paging a[rel=next]").attr("href"), 200);
        assertThat(older.select("nav.paging a").eachText()).containsExactly("Newest");
        assertThat(older.select("nav.paging a").attr("href")).isEqualTo("/devices");
        assertThat(older.select(".card"))
                .as("the thirteenth and the three of the demonstration")
                .hasSize(4);
        assertThat(older.select(".card a").eachAttr("href"))
                .as("nothing twice, and the oldest at last")
                .doesNotContainAnyElementsOf(newest.select(".card a").eachAttr("href"))
                .contains(DEMO);
    }
}
