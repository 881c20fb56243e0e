package org.vanewright.engineering.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.inference.FlyingOrder.Plan;

class FlyingOrderTest {
    /** Pinned, so that a printed seed gives the printed order on any machine and with any later version. */
    @Test
    void aSeedFixesTheOrder() {
        FlyingOrder order = FlyingOrder.of(Plan.RANDOMISED_BLOCKS, 3, 5, 20_240_501);
        assertThat(order.blocks())
                .isEqualTo(
                        FlyingOrder.of(Plan.RANDOMISED_BLOCKS, 3, 5, 20_240_501).blocks());
        assertThat(order.seed()).isEqualTo(20_240_501);
        assertThat(order.blocks())
                .as("regression")
                .hasToString("[[1, 0, 2], [0, 2, 1], [2, 1, 0], [2, 1, 0], [0, 2, 1]]");
        assertThat(FlyingOrder.of(Plan.RANDOMISED_BLOCKS, 3, 50, 1).blocks())
                .isNotEqualTo(FlyingOrder.of(Plan.RANDOMISED_BLOCKS, 3, 50, 2).blocks());
    }

    @Test
    void interleavedGoesThereAndBack() {
        assertThat(FlyingOrder.of(Plan.INTERLEAVED, 3, 3, 0).blocks())
                .containsExactly(List.of(0, 1, 2), List.of(2, 1, 0), List.of(0, 1, 2));
    }

    @Test
    void everyBlockHoldsEachConfigurationOnce() {
        for (Plan plan : Plan.values()) {
            for (int k = 2; k <= FlyingOrder.MOST_CONFIGURATIONS; k++) {
                int configurations = k;
                assertThat(FlyingOrder.of(plan, k, 20, k).blocks())
                        .hasSize(20)
                        .allSatisfy(block -> assertThat(block)
                                .doesNotHaveDuplicates()
                                .hasSize(configurations)
                                .contains(0, configurations - 1));
            }
        }
    }

    /** Over many seeds each of the six orders of three comes up equally often; 6,000 blocks, five deviations. */
    @Test
    void everyOrderIsEquallyLikely() {
        int[] first = new int[6];
        for (long seed = 0; seed < 6_000; seed++) {
            List<Integer> block =
                    FlyingOrder.of(Plan.RANDOMISED_BLOCKS, 3, 1, seed).blocks().get(0);
            first[block.get(0) * 2 + (block.get(1) > block.get(2) ? 1 : 0)]++;
        }
        double deviation = Math.sqrt(6_000 * (1 / 6.0) * (5 / 6.0));
        for (int count : first) {
            assertThat((double) count).isCloseTo(1_000, within(5 * deviation));
        }
    }

    @Test
    void namesWhatIsWrong() {
        assertThatThrownBy(() -> FlyingOrder.of(Plan.INTERLEAVED, 1, 1, 0)).hasMessageStartingWith("configurations");
        assertThatThrownBy(() -> FlyingOrder.of(Plan.INTERLEAVED, 2, 0, 0)).hasMessageStartingWith("blocks");
    }
}
