package org.vanewright.engineering.flightlog;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Reads a log of any length; run in a small heap. */
final class BigLog {
    private static final LogMapping MAPPING = new LogMapping(List.of(
            new LogColumn(LogQuantity.TIME, 0, LogUnit.SECONDS),
            new LogColumn(LogQuantity.AIRSPEED, 1, LogUnit.KT),
            new LogColumn(LogQuantity.ALTITUDE, 2, LogUnit.FT),
            new LogColumn(LogQuantity.GROUND_SPEED, 3, LogUnit.KT),
            new LogColumn(LogQuantity.TRACK, 4, LogUnit.DEG),
            new LogColumn(LogQuantity.LOAD_FACTOR, 5, LogUnit.G),
            new LogColumn(LogQuantity.PITCH_RATE, 6, LogUnit.DEG_PER_S),
            new LogColumn(LogQuantity.TEMPERATURE, 7, LogUnit.CELSIUS),
            new LogColumn(LogQuantity.POWER, 8, LogUnit.PERCENT)));

    private BigLog() {}

    /** Prints rows, stalls, megabytes of the largest heap. First argument: rows to make up, or a file. */
    public static void main(String[] arguments) throws Exception {
        InputStream file = arguments[0].matches("\\d+")
                ? new SequenceInputStream(new Made(Long.parseLong(arguments[0])))
                : Files.newInputStream(Path.of(arguments[0]));
        long begun = System.nanoTime();
        LogScan scan = new LogScan();
        RowTally tally = new RowTally();
        new CsvLog(file).read(MAPPING, scan, tally);
        long stalls = scan.finish().events().stream()
                .filter(e -> e.kind() == EventKind.STALL)
                .count();
        System.out.println(tally.rows() + " " + tally.bad() + " " + stalls + " "
                + Runtime.getRuntime().maxMemory() / (1024 * 1024) + " " + (System.nanoTime() - begun) / 1_000_000);
    }

    /** A stall every 90 s at 20 rows a second, a minute of rows at a time. */
    private static final class Made implements Enumeration<InputStream> {
        private static final int AT_ONCE = 1200;

        private final Random random = new Random(1);
        private final long rows;
        private long done = -1;

        Made(long rows) {
            this.rows = rows;
        }

        @Override
        public boolean hasMoreElements() {
            return done < rows;
        }

        @Override
        public InputStream nextElement() {
            StringBuilder text = new StringBuilder();
            if (done < 0) {
                text.append("time,ias,alt,gs,track,nz,q,oat,power\n");
                done = 0;
            }
            for (int i = 0; i < AT_ONCE && done < rows; i++, done++) {
                row(text, done / 20.0);
            }
            return new ByteArrayInputStream(text.toString().getBytes(StandardCharsets.US_ASCII));
        }

        private void row(StringBuilder text, double time) {
            double phase = time % 90;
            double speed = phase < 40 ? 65 : phase < 60 ? 105 - phase : Math.min(65, 45 + 3 * (phase - 60));
            double sunk = phase < 60 ? 0 : phase < 75 ? Math.min(120, (phase - 60) * 25) : 120 * (90 - phase) / 15;
            boolean breaks = phase > 60 && phase < 61.5;
            double load = breaks ? 1 - 0.4 * Math.sin(Math.PI * (phase - 60) / 1.5) : 1;
            speed += 0.4 * random.nextGaussian();
            text.append(String.format(
                    Locale.ROOT,
                    "%.2f,%.2f,%.1f,%.1f,40.0,%.3f,%.2f,8.0,60%n",
                    time,
                    speed,
                    4000 - sunk,
                    speed + 10,
                    load,
                    breaks ? -10.0 : 0.0));
        }
    }
}
