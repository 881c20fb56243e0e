package org.vanewright.account.web.steward;

import static java.nio.charset.StandardCharsets.UTF_8;

import jakarta.servlet.http.HttpServletResponse;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;
import org.vanewright.account.LogDesk.Export;
import org.vanewright.audit.AuditEntry;
import org.vanewright.platform.CsvCells;
import tools.jackson.databind.json.JsonMapper;

/** Writes the audit log entry by entry, so that a long one needs little memory. */
@Component
class LogFiles {
    private static final CSVFormat CSV = CSVFormat.RFC4180
            .builder()
            .setHeader("id", "at_utc", "person_id", "person", "event", "subject", "detail", "address")
            .get();

    private final JsonMapper mapper;

    LogFiles(JsonMapper mapper) {
        this.mapper = mapper;
    }

    /** Comma-separated values (RFC 4180). */
    void csv(Export entries, HttpServletResponse response) throws IOException {
        try (CSVPrinter printer = new CSVPrinter(begin("text/csv", "audit-log.csv", response), CSV)) {
            entries.forEach(entry -> print(printer, entry));
        }
    }

    /** One JSON object a line. */
    void jsonLines(Export entries, HttpServletResponse response) throws IOException {
        try (Writer out = begin("application/jsonl", "audit-log.jsonl", response)) {
            entries.forEach(entry -> print(out, entry));
        }
    }

    private static Writer begin(String type, String name, HttpServletResponse response) throws IOException {
        response.setContentType(type);
        response.setCharacterEncoding(UTF_8);
        response.setHeader(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + name + "\"");
        response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
        return new BufferedWriter(new OutputStreamWriter(response.getOutputStream(), UTF_8));
    }

    private static void print(CSVPrinter printer, AuditEntry entry) {
        try {
            String personId = entry.personId();
            Stream<String> texts = Stream.of(
                    personId == null ? "" : personId,
                    entry.person(),
                    entry.event(),
                    entry.subject(),
                    entry.detail(),
                    entry.address());
            printer.printRecord(Stream.concat(
                    Stream.of(Long.toString(entry.id()), entry.at().toString()), texts.map(CsvCells::defuse)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void print(Writer out, AuditEntry entry) {
        try {
            out.write(mapper.writeValueAsString(entry));
            out.write('\n');
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
