package org.vanewright.engineering.flightlog;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** A flight made up from a seed, with gusts, noise and dropouts; knows what was really flown. */
final class SyntheticFlight {
    /** What was really flown; the numbers that do not belong to its kind are NaN. */
    record Truth(EventKind kind, double startS, double endS, double speedKt, double rate, double trackDeg) {}

    /** What a logger records. */
    record Recorder(double hz, boolean loadFactor, boolean pitchRate) {}

    private final Random random;
    private final Recorder recorder;
    private final SampleSink sink;
    final List<Truth> truth = new ArrayList<>();

    private double t;
    private double speed = 60;
    private double height = 3000;
    private double track = 40;
    private double groundSpeed = 70;
    private double g = 1;
    private double q;
    private double power = 60;
    private double gust;
    private double bump;
    private double roughness = 1;
    private double dropUntil;
    private double blankUntil;

    SyntheticFlight(long seed, Recorder recorder, SampleSink sink) {
        this.random = new Random(seed);
        this.recorder = recorder;
        this.sink = sink;
    }

    /** With gusts of a tenth. */
    SyntheticFlight inCalmAir() {
        roughness = 0.1;
        return this;
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private void step() {
        double dt = 1 / recorder.hz;
        t += dt;
        gust += -gust * dt / 1.5 + 0.8 * roughness * Math.sqrt(2 * dt / 1.5) * random.nextGaussian();
        bump += -bump * dt / 0.3 + 0.04 * roughness * Math.sqrt(2 * Math.min(1, dt / 0.3)) * random.nextGaussian();
        if (random.nextDouble() < dt / 25) {
            dropUntil = t + between(0.3, 0.8);
        }
        if (random.nextDouble() < dt / 15) {
            blankUntil = t + between(0.2, 0.6);
        }
        if (t < dropUntil) {
            return;
        }
        sink.accept(new FlightSample(
                t,
                t < blankUntil ? Double.NaN : speed + gust + 0.4 * random.nextGaussian(),
                height + 4 * random.nextGaussian(),
                groundSpeed + 0.3 * random.nextGaussian(),
                Angles.compass(track + 0.6 * random.nextGaussian()),
                recorder.loadFactor ? g + bump + 0.03 * random.nextGaussian() : Double.NaN,
                recorder.pitchRate ? q + 0.8 * random.nextGaussian() : Double.NaN,
                8,
                power + 0.5 * random.nextGaussian()));
    }

    /** Goes to a speed and climb rate within a time; the rest stays level. */
    private void fly(double seconds, double toKt, double climbFtPerS) {
        double from = speed;
        double begun = t;
        while (t < begun + seconds) {
            speed = from + (toKt - from) * Math.min(1, (t - begun) / seconds);
            height += climbFtPerS / recorder.hz;
            step();
        }
        speed = toKt;
    }

    void stall() {
        double stallKt = between(42, 50);
        double rate = between(0.5, 2);
        fly(8, between(62, 70), between(2, 6));
        fly((speed - stallKt) / rate, stallKt, 0);
        double broke = t;
        truth.add(new Truth(EventKind.STALL, broke - 0.1 * stallKt / rate, broke, stallKt, rate, Double.NaN));
        double drop = between(0.35, 0.6);
        double nose = between(9, 18);
        double gains = between(2.5, 4.5);
        double sinks = between(15, 35);
        while (t < broke + 5) {
            double since = t - broke;
            g = since < 1.6 ? 1 - drop * Math.sin(Math.PI * since / 1.6) : 1.15;
            q = since < 1.2 ? -nose * Math.sin(Math.PI * since / 1.2) : since < 4 ? 3 : 0;
            speed = stallKt + Math.max(0, since - 0.4) * gains;
            height -= sinks / recorder.hz;
            step();
        }
        g = 1;
        q = 0;
        fly(between(10, 20), 65, 6);
    }

    /** Slows down, holds, eases the nose and goes on: no stall. */
    void approachWithoutStall() {
        fly(10, 65, 0);
        fly(14, 52, 0);
        fly(between(3, 20), 52, 0);
        g = 0.93;
        q = -2;
        fly(2, 53, -5);
        g = 1;
        q = 0;
        fly(8, 65, -6);
    }

    void steepTurn() {
        fly(6, 64, 0);
        double begun = t;
        while (t < begun + 24) {
            g = 1.5;
            q = 7;
            track = Angles.compass(track + 15 / recorder.hz);
            speed = 64 - Math.min(10, (t - begun) * 0.6);
            step();
        }
        g = 1;
        q = 0;
        fly(8, 66, -2);
    }

    void slowOscillation() {
        double begun = t;
        double middle = speed;
        while (t < begun + 50) {
            double phase = 2 * Math.PI * (t - begun) / 25;
            speed = middle - 8 * Math.sin(phase);
            g = 1 - 0.1 * Math.sin(phase + 0.3);
            q = -2 * Math.cos(phase);
            // What is lost in speed is won in height, v·dv/g.
            height += 11.6 * Math.cos(phase) / recorder.hz;
            step();
        }
        g = 1;
        q = 0;
        speed = middle;
    }

    void roughAir() {
        roughness *= 2;
        fly(40, speed, 0);
        roughness /= 2;
        fly(5, speed, 0);
    }

    void touchAndGo() {
        double air = height;
        fly(30, 55, -12);
        fly(8, 40, 0);
        g = 1.3;
        step();
        g = 1;
        fly(8, 30, 0);
        fly(10, 58, 0);
        fly(30, 65, (air - height) / 30);
    }

    void silence() {
        dropUntil = t + between(8, 20);
        fly(dropUntil - t + 1, speed, 0);
    }

    void cruise() {
        fly(10, between(75, 95), 0);
        fly(6, speed, 0);
        double begun = t;
        fly(between(45, 90), speed, 0);
        truth.add(new Truth(EventKind.CRUISE, begun, t, speed, Double.NaN, track));
        turn();
    }

    void climb() {
        fly(8, 62, 5);
        double rate = between(5, 14);
        double begun = t;
        fly(between(65, 100), 62, rate);
        truth.add(new Truth(EventKind.CLIMB, begun, t, 62, rate * 60, track));
        fly(12, 75, -1);
    }

    void leg() {
        turn();
        groundSpeed = between(55, 100);
        double begun = t;
        fly(between(40, 80), speed, 0);
        truth.add(new Truth(EventKind.LEG, begun, t, groundSpeed, Double.NaN, track));
        turn();
    }

    private void turn() {
        double begun = t;
        double from = groundSpeed;
        while (t < begun + 20) {
            track = Angles.compass(track + 6 / recorder.hz);
            groundSpeed = from + 10 * Math.sin(Math.PI * (t - begun) / 20);
            step();
        }
        groundSpeed = from;
    }
}
