package org.vanewright.engineering.flightlog;

/** A straight line by least squares, point by point. */
final class LineFit {
    private int count;
    private double meanX;
    private double meanY;
    private double squares;
    private double products;

    void add(double x, double y) {
        count++;
        double fromMean = x - meanX;
        meanX += fromMean / count;
        meanY += (y - meanY) / count;
        squares += fromMean * (x - meanX);
        products += fromMean * (y - meanY);
    }

    int count() {
        return count;
    }

    /** NaN where all points lie at one place. */
    double slope() {
        return squares > 0 ? products / squares : Double.NaN;
    }

    double at(double x) {
        return meanY + slope() * (x - meanX);
    }
}
