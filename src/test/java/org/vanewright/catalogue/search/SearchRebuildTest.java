package org.vanewright.catalogue.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.vanewright.engineering.input.Checks;
import org.vanewright.testing.ServerTest;

class SearchRebuildTest extends ServerTest {
    @Test
    void theIndexIsMadeAnewFromWhatIsPublished() throws Exception {
        JdbcClient jdbc = JdbcClient.create(context().getBean(javax.sql.DataSource.class));
        SearchRebuild rebuild = context().getBean(SearchRebuild.class);
        List<String> before = found();
        assertThat(before).contains("layout low-wing-pairs-over-the-taper 1", "adhesive clear-gel-like-tape 1");
        SearchIndexRepository index = context().getBean(SearchIndexRepository.class);
        new TransactionTemplate(context().getBean(PlatformTransactionManager.class)).executeWithoutResult(status -> {
            index.hold();
            index.remove("adhesive", "clear-gel-like-tape");
        });
        jdbc.sql("update search_entry set slug = 'gone' where slug = 'ogival-pair-on-one-base'")
                .update();
        rebuild.outdate();
        rebuild.wake().get(60, TimeUnit.SECONDS);
        assertThat(found()).isEqualTo(before);
        assertThat(index.isOlderThan(SearchIndexer.VERSION)).isFalse();
    }

    private List<String> found() {
        SearchService search = context().getBean(SearchService.class);
        SearchQuery query = SearchQuery.read("invented", null, "date", null, new Checks());
        return search.search(query, SearchService.LARGEST_PAGE).hits().stream()
                .filter(SearchHit::invented)
                .map(h -> h.kind() + " " + h.slug() + " " + h.revision())
                .sorted()
                .toList();
    }
}
