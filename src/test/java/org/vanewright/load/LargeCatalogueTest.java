package org.vanewright.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LargeCatalogueTest {
    private static final CatalogueSize SMALL = CatalogueSize.ofLayouts(300, 7);

    @ParameterizedTest
    @EnumSource
    void theSameSeedGivesTheSameDocuments(LargeCatalogue.Kind kind) {
        assertThat(kind.documents(SMALL).apply(2))
                .isEqualTo(kind.documents(SMALL).apply(2))
                .isNotEqualTo(kind.documents(CatalogueSize.ofLayouts(300, 8)).apply(2));
    }

    @Test
    void theLargeOneIsAsLargeAsItSays() {
        InventedFlights flights = new InventedFlights(CatalogueSize.LARGE);
        long points = 0;
        for (int i = 0; i < CatalogueSize.LARGE.campaigns(); i++) {
            points += flights.pointsOf(i);
        }
        assertThat(points).isEqualTo(1_000_000);
        assertThat(CatalogueSize.LARGE.retentionRecords()).isEqualTo(50_000);
        assertThat(CatalogueSize.ofLayouts(100_000, 7)).isEqualTo(CatalogueSize.LARGE);
    }
}
