package org.vanewright.platform.form;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.vanewright.platform.page.Numbers;
import org.vanewright.platform.page.Quantity;
import org.vanewright.platform.page.UnitSystem;

/** Puts the measures in a rule's words into the form's units. */
final class UnitText {
    private static final Pattern MEASURE = Pattern.compile("(-?\\d+(?:\\.\\d+)?) (mm|kg|m²)(?![\\w²])");

    private UnitText() {}

    static String in(UnitSystem units, String words) {
        if (units == UnitSystem.METRIC) {
            return words;
        }
        return MEASURE.matcher(words).replaceAll(m -> Matcher.quoteReplacement(shown(m.group(1), m.group(2), units)));
    }

    private static String shown(String number, String symbol, UnitSystem units) {
        Quantity quantity = switch (symbol) {
            case "mm" -> Quantity.LENGTH;
            case "kg" -> Quantity.MASS;
            default -> Quantity.AREA;
        };
        return Numbers.trimmed(quantity.shown(Double.parseDouble(number), units), 2) + " " + quantity.symbol(units);
    }
}
