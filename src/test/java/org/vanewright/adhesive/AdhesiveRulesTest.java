package org.vanewright.adhesive;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.record.CanonicalJson;

class AdhesiveRulesTest {
    private static List<String> fields(AdhesiveDocument adhesive) {
        return AdhesiveRules.check(adhesive).stream().map(FieldProblem::field).toList();
    }

    @Test
    void everythingOrNearlyNothingIsAllowed() {
        assertThat(fields(Adhesives.full("Foam"))).isEmpty();
        AdhesiveDocument bare = read("{\"name\":\"Bare\",\"carrier\":\"NONE\",\"thicknessMm\":0.2}");
        assertThat(fields(bare)).isEmpty();
        assertThat(bare.invented()).isFalse();
        assertThat(bare.peelNPerCm()).isNull();
    }

    private static AdhesiveDocument read(String json) {
        return new CanonicalJson().read(json, AdhesiveDocument.class);
    }

    private static AdhesiveDocument with(String more) {
        return read("{\"name\":\"Tape\",\"carrier\":\"FOAM\",\"thicknessMm\":1," + more + "}");
    }

    static Stream<Arguments> wrong() {
        return Stream.of(
                Arguments.of("\"peel\":{\"strengthNPerCm\":0,\"method\":\"ASTM_D3330\"}", "peel.strengthNPerCm"),
                Arguments.of("\"peel\":{\"strengthNPerCm\":1e9,\"method\":\"ASTM_D3330\"}", "peel.strengthNPerCm"),
                Arguments.of("\"peel\":{\"method\":\"ASTM_D3330\"}", "peel.strengthNPerCm"),
                Arguments.of("\"peel\":{\"strengthNPerCm\":10}", "peel.method"),
                // a method that measures something else
                Arguments.of("\"peel\":{\"strengthNPerCm\":10,\"method\":\"ASTM_D897\"}", "peel.method"),
                Arguments.of("\"shear\":{\"strengthKPa\":400,\"method\":\"ASTM_D3654\"}", "shear.method"),
                Arguments.of("\"shear\":{\"strengthKPa\":-4,\"method\":\"ISO_4587\"}", "shear.strengthKPa"),
                Arguments.of(
                        "\"holding\":{\"hours\":10,\"massG\":0,\"areaMm2\":645,\"method\":\"ASTM_D3654\"}",
                        "holding.massG"),
                Arguments.of("\"modulusKPa\":0", "modulusKPa"),
                Arguments.of("\"service\":{\"lowestC\":20,\"highestC\":10}", "service.highestC"),
                Arguments.of("\"service\":{\"lowestC\":-300}", "service.lowestC"),
                Arguments.of("\"dwellHours\":-1", "dwellHours"),
                Arguments.of("\"pack\":{}", "pack.pounds"),
                Arguments.of("\"pack\":{\"pounds\":0}", "pack.pounds"),
                Arguments.of(
                        "\"provenance\":[{\"figures\":\"tensile\",\"origin\":\"ESTIMATED\"}]",
                        "provenance[0].figures"));
    }

    @ParameterizedTest
    @MethodSource("wrong")
    void whatIsWrongIsNamed(String more, String field) {
        assertThat(fields(with(more))).containsExactly(field);
    }

    @ParameterizedTest
    @MethodSource("missing")
    void whatIsMissingIsNamed(@Nullable Carrier carrier, @Nullable Double thickness, String field) {
        assertThat(fields(Adhesives.of("Tape", carrier, thickness, 15.0))).containsExactly(field);
    }

    static Stream<Arguments> missing() {
        return Stream.of(
                Arguments.of(null, 1.0, "carrier"),
                Arguments.of(Carrier.FOAM, null, "thicknessMm"),
                Arguments.of(Carrier.FOAM, 0.0, "thicknessMm"),
                Arguments.of(Carrier.FOAM, Double.NaN, "thicknessMm"));
    }

    @Test
    void everyFigureCanSayWhereItComesFrom() {
        AdhesiveDocument full = Adhesives.full("Foam");
        assertThat(full.figureGroups()).hasSize(11);
        assertThat(read(new CanonicalJson().write(full))).isEqualTo(full);
    }
}
