package org.vanewright.method.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.flow.PublishedChecks;
import org.vanewright.method.ComputedCheck;
import org.vanewright.method.ComputedChecks;
import org.vanewright.testing.ServerTest;

class MethodPageTest extends ServerTest {
    private List<ComputedCheck> all() {
        return context().getBean(ComputedChecks.class).byGroup().values().stream()
                .flatMap(List::stream)
                .toList();
    }

    /** Those that do not agree say why; the reason is ours. */
    @Test
    void whatDoesNotAgreeSaysWhy() {
        assertThat(all()).hasSizeGreaterThan(PublishedChecks.all().size());
        assertThat(all()).allSatisfy(c -> {
            assertThat(c.computed()).isFinite();
            assertThat(c.agrees()).as(c.check().toString()).isEqualTo(c.check().reasonOutside() == null);
        });
    }

    @Test
    void thePageShowsEveryFigureTheBadOnesToo() {
        Document page = page("/about/method", 200);

        assertThat(page.select("tbody tr")).hasSameSizeAs(all());
        assertThat(page.select("tbody td strong").eachText()).contains("yes", "no");
        assertThat(page.text()).contains("McCroskey", "Ladson", "Howarth", "from memory", "not read again");
        assertThat(page.text()).doesNotContain("NaN");
        assertThat(page.select("[id]").eachAttr("id")).doesNotHaveDuplicates();
    }
}
