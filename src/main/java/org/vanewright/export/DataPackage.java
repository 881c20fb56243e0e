package org.vanewright.export;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.vanewright.record.Licence;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.json.JsonMapper;

/** The descriptor of the export: Data Package, Data Resource and Table Schema, specifications v1 (frictionlessdata.io). */
final class DataPackage {
    static final String NAME = "datapackage.json";

    private static final String UTF_8 = "utf-8";
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private final List<Map<String, Object>> resources = new ArrayList<>();

    /** What the whole says of itself. */
    record Head(
            String title, String homepage, @Nullable Instant changedAt, List<Licence> licences, Set<Source> sources) {}

    /** An instance whose records are in it. */
    record Source(String title, String path) {}

    void table(Table<?> table, String path, long bytes, String sha256) {
        Map<String, Object> resource = resource(table.name(), "tabular-data-resource", path, "csv", "text/csv");
        resource.put("encoding", UTF_8);
        resource.put("bytes", bytes);
        resource.put("hash", "sha256:" + sha256);
        resource.put("description", table.description() + ".");
        resource.put("dialect", dialect());
        resource.put("schema", schema(table));
        resources.add(resource);
    }

    private static Map<String, Object> dialect() {
        Map<String, Object> dialect = new LinkedHashMap<>();
        dialect.put("delimiter", ",");
        dialect.put("lineTerminator", "\r\n");
        dialect.put("quoteChar", "\"");
        dialect.put("doubleQuote", true);
        dialect.put("header", true);
        return dialect;
    }

    /** @param encoding absent for what is no text */
    void file(
            String name,
            String path,
            String format,
            String mediaType,
            @Nullable String encoding,
            long bytes,
            String sha256,
            String description) {
        Map<String, Object> resource = resource(name, "data-resource", path, format, mediaType);
        if (encoding != null) {
            resource.put("encoding", encoding);
        }
        resource.put("bytes", bytes);
        resource.put("hash", "sha256:" + sha256);
        resource.put("description", description);
        resources.add(resource);
    }

    void text(String name, String path, String format, String mediaType, long bytes, String sha256, String words) {
        file(name, path, format, mediaType, UTF_8, bytes, sha256, words);
    }

    private static Map<String, Object> resource(
            String name, String profile, String path, String format, String mediaType) {
        Map<String, Object> resource = new LinkedHashMap<>();
        resource.put("name", name);
        resource.put("profile", profile);
        resource.put("path", path);
        resource.put("format", format);
        resource.put("mediatype", mediaType);
        return resource;
    }

    private static Map<String, Object> schema(Table<?> table) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put(
                "fields",
                table.columns().stream()
                        .map(c -> field(c, table.key().contains(c.name())))
                        .toList());
        schema.put("primaryKey", table.key());
        if (!table.foreignKeys().isEmpty()) {
            schema.put(
                    "foreignKeys",
                    table.foreignKeys().stream().map(DataPackage::foreignKey).toList());
        }
        schema.put("missingValues", List.of(""));
        return schema;
    }

    private static Map<String, Object> field(Column<?> column, boolean key) {
        Map<String, Object> field = new LinkedHashMap<>();
        field.put("name", column.name());
        field.put("type", column.type().word());
        field.put("format", "default");
        if (column.unit() != null) {
            field.put("unit", column.unit());
        }
        String unit = column.unit() == null ? "" : ", in " + column.unit();
        field.put("description", column.description() + unit + ".");
        if (key) {
            field.put("constraints", Map.of("required", true));
        }
        return field;
    }

    private static Map<String, Object> foreignKey(Columns.ForeignKey key) {
        Map<String, Object> reference = new LinkedHashMap<>();
        reference.put("resource", key.table());
        reference.put("fields", key.named());
        Map<String, Object> foreign = new LinkedHashMap<>();
        foreign.put("fields", key.columns());
        foreign.put("reference", reference);
        return foreign;
    }

    /** JSON that people can read, with the same line ends everywhere. */
    String write(Head head) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("profile", "data-package");
        all.put("name", "vanewright-record");
        all.put("title", head.title());
        all.put(
                "description",
                "Everything published on this instance, and what was withdrawn with the reason. Each revision has a licence"
                        + " of its own, in the table of revisions. Figures are measured, calculated or claimed as"
                        + " figure_origins says. Nothing here is an approval: read CAUTIONS.txt.");
        all.put("homepage", head.homepage());
        all.put("version", "1");
        if (head.changedAt() != null) {
            all.put("created", head.changedAt().toString());
        }
        if (!head.licences().isEmpty()) {
            all.put(
                    "licenses",
                    head.licences().stream().map(DataPackage::licence).toList());
        }
        all.put("sources", head.sources().stream().map(DataPackage::source).toList());
        all.put("resources", resources);
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer =
                new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines);
        return MAPPER.writer().with(printer).writeValueAsString(all) + "\n";
    }

    private static Map<String, String> licence(Licence licence) {
        Map<String, String> entry = new LinkedHashMap<>();
        entry.put("name", licence.spdx());
        entry.put("path", licence.url());
        entry.put("title", licence.label());
        return entry;
    }

    private static Map<String, String> source(Source source) {
        Map<String, String> entry = new LinkedHashMap<>();
        entry.put("title", source.title());
        entry.put("path", source.path());
        return entry;
    }
}
