package org.vanewright.engineering.vane;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.vane.GuidanceCheck.Verdict;
import org.vanewright.engineering.vane.Recommendation.Known;
import org.vanewright.engineering.vane.Recommendation.Quantity;
import org.vanewright.engineering.vane.Recommendation.Rows;

class GuidanceCheckTest {
    private static Recommendation recommendation(
            Quantity quantity, Rows rows, @Nullable Double low, @Nullable Double high) {
        return new Recommendation("id", quantity, rows, low, high, "text", null, Known.COMMON_PRACTICE, "range");
    }

    private static VaneProportions row(@Nullable Double heightToThickness, @Nullable Double gap) {
        return new VaneProportions(heightToThickness, 2.5, 15, 7.5, gap, null, 0.08, 20_000);
    }

    private static GuidanceCheck check(Recommendation recommendation, VaneProportions row) {
        return GuidanceCheck.of(List.of(recommendation), row, row.gapToHeight() != null)
                .get(0);
    }

    @Test
    void aRowIsInsideBelowOrAboveByHowMuch() {
        Recommendation band = recommendation(Quantity.HEIGHT_TO_THICKNESS, Rows.ANY, 0.2, 0.5);
        assertThat(check(band, row(0.5, null)).verdict()).isEqualTo(Verdict.INSIDE);
        assertThat(check(band, row(0.1, null)).verdict()).isEqualTo(Verdict.BELOW);
        assertThat(check(band, row(0.1, null)).offBy()).isEqualTo(0.1 - 0.2);
        assertThat(check(band, row(2.0, null)).verdict()).isEqualTo(Verdict.ABOVE);
        assertThat(check(band, row(2.0, null)).offBy()).isEqualTo(1.5);
        assertThat(check(band, row(null, null)).verdict()).isEqualTo(Verdict.NOT_KNOWN);
        assertThat(check(band, row(null, null)).offBy()).isNull();
    }

    @Test
    void anOpenEndBoundsNothing() {
        Recommendation least = recommendation(Quantity.PITCH_TO_HEIGHT, Rows.CO_ROTATING, 3.0, null);
        assertThat(check(least, row(1.0, null)).verdict()).isEqualTo(Verdict.INSIDE);
    }

    @Test
    void onlyRecommendationsForSuchRowsAreLookedAt() {
        List<Recommendation> all = List.of(
                recommendation(Quantity.GAP_TO_HEIGHT, Rows.PAIRS, 2.0, 3.0),
                recommendation(Quantity.PITCH_TO_HEIGHT, Rows.CO_ROTATING, 3.0, null),
                recommendation(Quantity.LENGTH_TO_HEIGHT, Rows.ANY, 2.0, 3.0));
        assertThat(GuidanceCheck.of(all, row(1.0, null), false)).hasSize(2);
        assertThat(GuidanceCheck.of(all, row(1.0, 2.5), true))
                .extracting(GuidanceCheck::verdict)
                .containsExactly(Verdict.INSIDE, Verdict.INSIDE);
    }
}
