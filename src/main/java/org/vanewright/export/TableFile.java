package org.vanewright.export;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** A table while it is written, as comma-separated values (RFC 4180). */
final class TableFile implements Closeable {
    private final Table<?> table;
    private final PartFile file;
    private final CSVPrinter printer;

    TableFile(Table<?> table, Path directory) throws IOException {
        this.table = table;
        this.file = new PartFile(directory.resolve(table.name() + ".csv"));
        this.printer = new CSVPrinter(new OutputStreamWriter(file.stream(), StandardCharsets.UTF_8), CSVFormat.RFC4180);
        printer.printRecord(table.header());
    }

    void row(List<String> cells) {
        try {
            printer.printRecord(cells);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Table<?> table() {
        return table;
    }

    PartFile file() {
        return file;
    }

    @Override
    public void close() throws IOException {
        printer.close();
        file.close();
    }
}
