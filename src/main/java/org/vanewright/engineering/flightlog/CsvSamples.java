package org.vanewright.engineering.flightlog;

import java.util.Arrays;
import org.apache.commons.csv.CSVRecord;

/** Turns rows into samples and keeps count. */
final class CsvSamples {
    private static final int LONGEST_QUOTED = 40;

    private final LogColumn[] columns;
    private final int timeColumn;
    private final TimeReader times;
    private final SampleSink sink;
    private final RowTally tally;
    private final double[] values = new double[LogQuantity.values().length];
    private double lastS = Double.NEGATIVE_INFINITY;

    CsvSamples(LogMapping mapping, SampleSink sink, RowTally tally) {
        LogColumn time = mapping.of(LogQuantity.TIME).orElseThrow();
        this.columns = mapping.columns().stream()
                .filter(c -> c.quantity() != LogQuantity.TIME)
                .toArray(LogColumn[]::new);
        this.timeColumn = time.column();
        this.times = new TimeReader(time.unit());
        this.sink = sink;
        this.tally = tally;
    }

    void take(CSVRecord row) {
        String problem = read(row);
        if (problem == null) {
            lastS = values[0];
            tally.good();
            sink.accept(FlightSample.of(values));
        } else {
            tally.bad(row.getRecordNumber(), problem);
        }
    }

    private @org.jspecify.annotations.Nullable String read(CSVRecord row) {
        if (row.size() <= timeColumn) {
            return "has " + row.size() + " columns only";
        }
        String time = row.get(timeColumn);
        Arrays.fill(values, Double.NaN);
        values[0] = times.read(time);
        if (Double.isNaN(values[0]) || !LogQuantity.TIME.allows(values[0])) {
            return "time is " + quoted(time);
        }
        if (values[0] <= lastS) {
            return "time " + quoted(time) + " is not after that of the row before";
        }
        for (LogColumn each : columns) {
            String text = each.column() < row.size() ? row.get(each.column()) : "";
            if (!text.isEmpty()) {
                double value = each.unit().toTrade(CsvNumbers.read(text));
                if (!each.quantity().allows(value)) {
                    return each.quantity().label() + " is " + quoted(text) + "; allowed is "
                            + each.quantity().allowed();
                }
                values[each.quantity().ordinal()] =
                        each.quantity() == LogQuantity.TRACK ? Angles.compass(value) : value;
            }
        }
        return null;
    }

    private static String quoted(String text) {
        if (text.isBlank()) {
            return "missing";
        }
        return text.length() <= LONGEST_QUOTED ? text : text.substring(0, LONGEST_QUOTED - 1) + "…";
    }
}
