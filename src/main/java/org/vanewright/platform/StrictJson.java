package org.vanewright.platform;

import com.fasterxml.jackson.annotation.JsonInclude;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.json.JsonReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.cfg.CoercionAction;
import tools.jackson.databind.cfg.CoercionInputShape;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.type.LogicalType;

/**
 * How JSON from outside is read: nothing is guessed. An unknown property, a number in quotes, a fraction for a whole
 * number and a property given twice are refused. {@code NaN} and {@code Infinity} are read as doubles, so that the field
 * checks can refuse them by name.
 */
public final class StrictJson {
    private StrictJson() {}

    /** Sets these rules on a mapper that is being built. */
    public static void configure(JsonMapper.Builder builder) {
        builder.enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
                .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
                .changeDefaultPropertyInclusion(
                        ignored -> JsonInclude.Value.construct(JsonInclude.Include.ALWAYS, JsonInclude.Include.ALWAYS))
                .withCoercionConfig(
                        LogicalType.Textual,
                        text -> text.setCoercion(CoercionInputShape.Integer, CoercionAction.Fail)
                                .setCoercion(CoercionInputShape.Float, CoercionAction.Fail)
                                .setCoercion(CoercionInputShape.Boolean, CoercionAction.Fail))
                .withCoercionConfig(
                        LogicalType.Enum,
                        name -> name.setCoercion(CoercionInputShape.Integer, CoercionAction.Fail)
                                .setCoercion(CoercionInputShape.EmptyString, CoercionAction.Fail));
    }
}
