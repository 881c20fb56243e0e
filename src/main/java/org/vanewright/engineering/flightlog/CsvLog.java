package org.vanewright.engineering.flightlog;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A table of comma-, semicolon- or tab-separated values (RFC 4180), a header first; lines that begin with {@code #} are
 * remarks. Bytes that are no UTF-8 are replaced, since names of columns may be in another encoding.
 */
public final class CsvLog {
    private static final int PEEKED = 8192;

    private final InputStream file;

    /** @param file read once; not closed */
    public CsvLog(InputStream file) {
        this.file = file;
    }

    /**
     * The names of the columns, trimmed.
     *
     * @throws org.vanewright.engineering.input.InvalidInputException for what is no such table
     */
    public List<String> header() {
        try (Rows rows = open()) {
            return rows.header();
        } catch (IOException | UncheckedIOException e) {
            throw unreadable(e);
        }
    }

    /**
     * The first rows below the header, for a person who says what they are.
     *
     * @throws org.vanewright.engineering.input.InvalidInputException for what is no such table
     */
    public List<List<String>> firstRows(int most) {
        try (Rows rows = open()) {
            rows.header();
            List<List<String>> first = new ArrayList<>();
            for (CSVRecord row = rows.next(); row != null && first.size() < most; row = rows.next()) {
                first.add(row.toList().stream().map(String::trim).toList());
            }
            return first;
        } catch (IOException | UncheckedIOException e) {
            throw unreadable(e);
        }
    }

    /**
     * Reads all rows. A row whose time is missing, or no later than that of a good row before, is bad, as is one with
     * anything but a number where a number should be. An empty cell was not recorded.
     *
     * @throws org.vanewright.engineering.input.InvalidInputException for what is no such table
     */
    public void read(LogMapping mapping, SampleSink sink, RowTally tally) {
        try (Rows rows = open()) {
            List<String> header = rows.header();
            for (LogColumn each : mapping.columns()) {
                if (each.column() >= header.size()) {
                    throw Refused.file(header.size() + " columns", "a table with column " + (each.column() + 1));
                }
            }
            CsvSamples samples = new CsvSamples(mapping, sink, tally);
            for (CSVRecord row = rows.next(); row != null; row = rows.next()) {
                samples.take(row);
            }
        } catch (IOException | UncheckedIOException e) {
            throw unreadable(e);
        }
    }

    private static RuntimeException unreadable(Exception cause) {
        // The parser wraps what it cannot read; a quote that is never closed is the common case.
        RuntimeException refused = Refused.file("a table that breaks off or is badly quoted", "values as in RFC 4180");
        refused.addSuppressed(cause);
        return refused;
    }

    private Rows open() throws IOException {
        RowBound bound = new RowBound(new InputStreamReader(file, StandardCharsets.UTF_8));
        BufferedReader text = new BufferedReader(bound, PEEKED);
        skipMark(text);
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(delimiter(text))
                .setCommentMarker('#')
                .setIgnoreEmptyLines(true)
                .setIgnoreSurroundingSpaces(true)
                .get();
        return new Rows(
                bound, CSVParser.builder().setReader(text).setFormat(format).get());
    }

    private static void skipMark(BufferedReader text) throws IOException {
        text.mark(1);
        if (text.read() != '\uFEFF') {
            text.reset();
        }
    }

    /** Whichever stands most often in the first line that is no remark. */
    private static char delimiter(Reader text) throws IOException {
        text.mark(PEEKED);
        char[] peeked = new char[PEEKED];
        int count = 0;
        for (int now = 0; now >= 0 && count < PEEKED; now = text.read(peeked, count, PEEKED - count)) {
            count += now;
        }
        text.reset();
        String line = new String(peeked, 0, count)
                .lines()
                .filter(l -> !l.isBlank() && !l.startsWith("#"))
                .findFirst()
                .orElse("");
        char best = ',';
        long most = 0;
        for (char each : new char[] {',', ';', '\t'}) {
            long found = line.chars().filter(c -> c == each).count();
            if (found > most) {
                most = found;
                best = each;
            }
        }
        return best;
    }

    /** The rows one after another. */
    private static final class Rows implements AutoCloseable {
        private final RowBound bound;
        private final CSVParser parser;
        private final java.util.Iterator<CSVRecord> records;

        Rows(RowBound bound, CSVParser parser) {
            this.bound = bound;
            this.parser = parser;
            this.records = parser.iterator();
        }

        List<String> header() {
            CSVRecord first = next();
            if (first == null) {
                throw Refused.file("an empty file", "a header with the names of the columns, then rows");
            }
            if (first.size() < 2 || first.size() > LogMapping.MAX_COLUMNS) {
                throw Refused.file(
                        first.size() + (first.size() == 1 ? " column" : " columns"),
                        "2 to " + LogMapping.MAX_COLUMNS + " columns, separated by commas, semicolons or tabs");
            }
            return first.toList().stream().map(String::trim).toList();
        }

        @org.jspecify.annotations.Nullable
        CSVRecord next() {
            CSVRecord record = records.hasNext() ? records.next() : null;
            bound.rowEnded();
            return record;
        }

        @Override
        public void close() {
            // The stream belongs to the caller.
        }
    }
}
