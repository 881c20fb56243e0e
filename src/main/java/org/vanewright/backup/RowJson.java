package org.vanewright.backup;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.backup.BackupManifest.Column;
import org.vanewright.backup.BackupManifest.Form;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonWriteFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A row as a line of JSON, in ASCII, so that no text is changed on its way, whatever it holds. */
final class RowJson {
    /** Of one line: above what either database holds in a row of ours. */
    static final int LONGEST = 64 << 20;

    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxStringLength(LONGEST)
                            .build())
                    .build())
            .enable(JsonWriteFeature.ESCAPE_NON_ASCII)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private RowJson() {}

    static void write(List<@Nullable Object> row, OutputStream out) throws IOException {
        List<@Nullable Object> written = new ArrayList<>();
        for (Object value : row) {
            written.add(
                    value instanceof Instant moment
                            ? moment.toString()
                            : value instanceof byte[] bytes
                                    ? Base64.getEncoder().encodeToString(bytes)
                                    : value);
        }
        out.write(MAPPER.writeValueAsBytes(written));
        out.write('\n');
    }

    /** @throws BackupRefusal for what is no such row */
    static List<@Nullable Object> read(byte[] line, List<Column> columns, String where) {
        JsonNode row;
        try {
            row = MAPPER.readTree(line);
        } catch (JacksonException e) {
            BackupRefusal refusal = new BackupRefusal(where + " is no JSON. The backup is damaged.");
            refusal.addSuppressed(e);
            throw refusal;
        }
        BackupRefusal.require(
                row != null && row.isArray() && row.size() == columns.size(),
                where + " has not the columns of its table. The backup is damaged.");
        List<@Nullable Object> values = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            Column column = columns.get(i);
            values.add(value(row.get(i), column.form(), where + ", column " + column.name()));
        }
        return values;
    }

    private static @Nullable Object value(JsonNode value, Form form, String where) {
        if (value.isNull()) {
            return null;
        }
        try {
            Object read = switch (form) {
                case TEXT, NATIVE -> value.isString() ? value.stringValue() : null;
                case WHOLE -> value.canConvertToLong() && value.isIntegralNumber() ? value.longValue() : null;
                case DECIMAL -> value.isNumber() ? new BigDecimal(value.asString()) : null;
                case BOOLEAN -> value.isBoolean() ? value.booleanValue() : null;
                case MOMENT -> value.isString() ? Instant.parse(value.stringValue()) : null;
                case BYTES ->
                    value.isString()
                            ? Base64.getDecoder().decode(value.stringValue().getBytes(StandardCharsets.US_ASCII))
                            : null;
            };
            if (read != null) {
                return read;
            }
        } catch (DateTimeException | IllegalArgumentException e) {
            throw refusal(where, form);
        }
        throw refusal(where, form);
    }

    private static BackupRefusal refusal(String where, Form form) {
        return new BackupRefusal(where + " is not of the form " + form + ". The backup is damaged.");
    }

    static byte[] manifest(BackupManifest manifest) {
        return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsBytes(manifest);
    }

    static BackupManifest manifest(byte[] json) {
        return MAPPER.readValue(json, BackupManifest.class);
    }
}
