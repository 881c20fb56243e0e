package org.vanewright.export;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.vanewright.platform.Downloads;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A Data Package read by nothing but what its descriptor says, with everything that is not as it says. */
final class ReadPackage {
    private final Map<String, byte[]> files = new LinkedHashMap<>();
    private final Map<String, List<CSVRecord>> tables = new LinkedHashMap<>();
    private final List<String> problems = new ArrayList<>();
    private final JsonNode descriptor;

    ReadPackage(byte[] archive) throws IOException {
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(archive), StandardCharsets.UTF_8)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                files.put(entry.getName(), zip.readAllBytes());
            }
        }
        descriptor = JsonMapper.builder().build().readTree(files.get("datapackage.json"));
        Set<String> described = new HashSet<>(Set.of("datapackage.json", "manifest-sha256.txt"));
        for (JsonNode resource : descriptor.get("resources")) {
            described.add(resource.get("path").asString());
            file(resource);
        }
        files.keySet().stream().filter(f -> !described.contains(f)).forEach(f -> problems.add(f + " is not described"));
        descriptor.get("resources").forEach(this::keys);
    }

    private void file(JsonNode resource) throws IOException {
        String path = resource.get("path").asString();
        byte[] content = files.get(path);
        if (content == null) {
            problems.add(path + " is missing");
            return;
        }
        expect(content.length == resource.get("bytes").asInt(), path + " has another size");
        expect(
                ("sha256:" + Downloads.sha256(content))
                        .equals(resource.get("hash").asString()),
                path + ": hash");
        if (resource.get("profile").asString().equals("tabular-data-resource")) {
            table(resource, new String(content, StandardCharsets.UTF_8));
        }
    }

    private void table(JsonNode resource, String text) throws IOException {
        String name = resource.get("name").asString();
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(text, format)) {
            List<String> fields = new ArrayList<>();
            resource.get("schema")
                    .get("fields")
                    .forEach(f -> fields.add(f.get("name").asString()));
            expect(parser.getHeaderNames().equals(fields), name + " has other columns");
            List<CSVRecord> rows = parser.getRecords();
            tables.put(name, rows);
            for (JsonNode field : resource.get("schema").get("fields")) {
                rows.forEach(row -> cell(name, field, row.get(field.get("name").asString())));
            }
        }
    }

    private void cell(String table, JsonNode field, String cell) {
        boolean ok;
        try {
            ok = cell.isEmpty()
                    ? !field.path("constraints").path("required").asBoolean(false)
                    : switch (field.get("type").asString()) {
                        case "string" -> true;
                        case "integer" -> String.valueOf(Integer.parseInt(cell)).equals(cell);
                        case "number" -> new BigDecimal(cell).signum() > -2 && !cell.contains("E");
                        case "boolean" -> cell.equals("true") || cell.equals("false");
                        case "datetime" -> cell.length() == 20 && Instant.parse(cell) != null;
                        case "date" -> LocalDate.parse(cell) != null;
                        default -> false;
                    };
        } catch (RuntimeException e) {
            ok = false;
        }
        expect(ok, table + "." + field.get("name").asString() + " is " + cell);
    }

    private void keys(JsonNode resource) {
        String name = resource.get("name").asString();
        if (!tables.containsKey(name)) {
            return;
        }
        JsonNode schema = resource.get("schema");
        List<List<String>> keys = cells(name, schema.get("primaryKey"));
        expect(new HashSet<>(keys).size() == keys.size(), name + " has a key twice");
        for (JsonNode foreign : schema.path("foreignKeys")) {
            JsonNode reference = foreign.get("reference");
            Set<List<String>> there =
                    new HashSet<>(cells(reference.get("resource").asString(), reference.get("fields")));
            for (List<String> key : cells(name, foreign.get("fields"))) {
                boolean empty = key.stream().allMatch(String::isEmpty);
                expect(empty || there.contains(key), name + " names " + key + ", which is not there");
            }
        }
    }

    private List<List<String>> cells(String table, JsonNode columns) {
        return tables.getOrDefault(table, List.of()).stream()
                .map(row -> {
                    List<String> key = new ArrayList<>();
                    columns.forEach(c -> key.add(row.get(c.asString())));
                    return key;
                })
                .toList();
    }

    private void expect(boolean ok, String problem) {
        if (!ok) {
            problems.add(problem);
        }
    }

    List<String> problems() {
        return problems;
    }

    JsonNode descriptor() {
        return descriptor;
    }

    Map<String, byte[]> files() {
        return files;
    }

    String text(String file) {
        return new String(Objects.requireNonNull(files.get(file), file), StandardCharsets.UTF_8);
    }

    List<CSVRecord> table(String name) {
        return Objects.requireNonNull(tables.get(name), name);
    }

    /** The row of a table whose column holds that. */
    CSVRecord row(String table, String column, String value) {
        return table(table).stream()
                .filter(row -> row.get(column).equals(value))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + value + " in " + table));
    }
}
