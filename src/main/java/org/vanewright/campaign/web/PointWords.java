package org.vanewright.campaign.web;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.vanewright.campaign.HandlingDocument;
import org.vanewright.campaign.LegDocument;
import org.vanewright.campaign.PointDocument;
import org.vanewright.platform.page.Numbers;

/** Test points in a line of words, raw, as they were read. */
final class PointWords {
    private PointWords() {}

    static String line(PointDocument p) {
        List<String> words = new ArrayList<>();
        words.add(p.kind() == null ? "Test point" : p.kind().label());
        words.add(or(p.configuration(), "no configuration"));
        add(words, p.sortie() == null ? null : "sortie " + p.sortie());
        add(words, p.block() == null ? null : "block " + p.block());
        add(words, p.indicatedAirspeedKt(), "kt indicated");
        add(words, p.pressureAltitudeFt(), "ft");
        add(words, p.outsideAirTemperatureC(), "°C");
        add(words, p.massThenKg(), "kg");
        add(words, p.loadFactor(), "g");
        add(words, p.entryRateKtPerS(), "kt/s");
        add(words, p.warningAirspeedKt(), "kt at the warning");
        add(words, p.wingDropDeg(), "° wing drop");
        add(words, p.powerPercent(), "% power");
        add(words, p.climbRateFtPerMin(), "ft/min");
        add(words, p.legs().isEmpty() ? null : legs(p.legs()));
        add(words, p.remark());
        add(words, p.source() == null ? null : p.source().label());
        return String.join(" · ", words);
    }

    static String line(HandlingDocument h) {
        return Stream.of(
                        or(h.configuration(), "no configuration"),
                        or(h.task(), "no task"),
                        h.rating() == null ? "no rating" : "rating " + h.rating(),
                        or(h.remark(), ""))
                .filter(w -> !w.isEmpty())
                .collect(Collectors.joining(" · "));
    }

    static String legs(List<LegDocument> legs) {
        return legs.stream()
                .map(l -> number(l.groundSpeedKt()) + " kt on "
                        + (l.headingDeg() == null
                                ? "track " + number(l.trackDeg()) + "°"
                                : "heading " + number(l.headingDeg()) + "°"))
                .collect(Collectors.joining(", "));
    }

    private static void add(List<String> words, @Nullable Double number, String unit) {
        if (number != null) {
            words.add(number(number) + (unit.startsWith("°") && !unit.equals("°C") ? "" : " ") + unit);
        }
    }

    private static void add(List<String> words, @Nullable String word) {
        if (word != null) {
            words.add(word);
        }
    }

    private static String number(@Nullable Double number) {
        return number == null ? "–" : Numbers.trimmed(number, 3);
    }

    private static String or(@Nullable String given, String otherwise) {
        return given == null ? otherwise : given;
    }
}
