package org.vanewright.engineering.flightlog;

/** The last samples, so many at most; the oldest has the index 0. */
final class Recent {
    private final FlightSample[] ring;
    private int first;
    private int size;

    Recent(int capacity) {
        ring = new FlightSample[capacity];
    }

    void add(FlightSample sample) {
        if (size == ring.length) {
            ring[first] = sample;
            first = (first + 1) % ring.length;
        } else {
            ring[(first + size) % ring.length] = sample;
            size++;
        }
    }

    int size() {
        return size;
    }

    FlightSample get(int index) {
        return ring[(first + index) % ring.length];
    }

    void clear() {
        size = 0;
    }

    /** Mean of what was recorded of a quantity from one time to another, both included; NaN where nothing was. */
    double mean(LogQuantity quantity, double fromS, double toS) {
        double sum = 0;
        int count = 0;
        for (int i = size - 1; i >= 0 && get(i).timeS() >= fromS; i--) {
            double value = get(i).get(quantity);
            if (get(i).timeS() <= toS && !Double.isNaN(value)) {
                sum += value;
                count++;
            }
        }
        return count == 0 ? Double.NaN : sum / count;
    }

    /** Least mean over {@code spanS} round each sample between the times; its time and value, NaN where nothing was. */
    Low lowest(LogQuantity quantity, double fromS, double toS, double spanS) {
        Low low = new Low(Double.NaN, Double.NaN);
        for (int i = size - 1; i >= 0 && get(i).timeS() >= fromS; i--) {
            double at = get(i).timeS();
            if (at <= toS) {
                double mean = mean(quantity, at - spanS / 2, at + spanS / 2);
                if (!(mean >= low.level)) {
                    low = Double.isNaN(mean) ? low : new Low(at, mean);
                }
            }
        }
        return low;
    }

    /**
     * The most that a quantity changes within {@code withinS} between the times, by means of a second; NaN where it was
     * not recorded.
     *
     * @param sign 1 for rises, -1 for falls
     */
    double quickest(int sign, LogQuantity quantity, double fromS, double toS, double withinS) {
        double most = Double.NaN;
        for (double at = fromS; at <= toS - withinS; at += 0.5) {
            double change = sign
                    * (mean(quantity, at + withinS - 0.5, at + withinS + 0.5) - mean(quantity, at - 0.5, at + 0.5));
            most = change <= most ? most : Double.isNaN(change) ? most : change;
        }
        return most;
    }

    /** A lowest value and when it was. */
    record Low(double timeS, double level) {}
}
