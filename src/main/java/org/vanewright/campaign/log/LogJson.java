package org.vanewright.campaign.log;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.flightlog.FoundEvent;
import org.vanewright.engineering.flightlog.LogMapping;
import org.vanewright.engineering.flightlog.RowTally.BadRow;
import org.vanewright.engineering.flightlog.TracePoint;
import tools.jackson.databind.json.JsonMapper;

/** What belongs to logs as it stands in the database; what was not recorded is {@code "NaN"}. */
final class LogJson {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private LogJson() {}

    static String write(Object content) {
        return MAPPER.writeValueAsString(content);
    }

    static @Nullable LogMapping mapping(@Nullable String text) {
        return text == null ? null : MAPPER.readValue(text, LogMapping.class);
    }

    static FoundEvent event(String text) {
        return MAPPER.readValue(text, FoundEvent.class);
    }

    static List<String> header(String text) {
        return List.copyOf(Arrays.asList(MAPPER.readValue(text, String[].class)));
    }

    static List<BadRow> badRows(@Nullable String text) {
        return text == null ? List.of() : List.copyOf(Arrays.asList(MAPPER.readValue(text, BadRow[].class)));
    }

    static List<TracePoint> trace(@Nullable String text) {
        return text == null ? List.of() : List.copyOf(Arrays.asList(MAPPER.readValue(text, TracePoint[].class)));
    }
}
