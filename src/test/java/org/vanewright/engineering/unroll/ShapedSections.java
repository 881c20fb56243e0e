package org.vanewright.engineering.unroll;

import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.SkinPoint;
import org.vanewright.engineering.section.SurfaceSide;

/** Sections with closed forms, and panels over them. */
final class ShapedSections {
    private ShapedSections() {}

    /** Full circle of diameter 1. */
    static Section circle() {
        return new Shape("circle", 0.5 * Math.PI) {
            @Override
            SkinPoint upperAtArc(double s) {
                double angle = 2 * s;
                return new SkinPoint(
                        0.5 * (1 - Math.cos(angle)), 0.5 * Math.sin(angle), s, Math.sin(angle), Math.cos(angle), 2);
            }

            @Override
            double arcAtX(double x) {
                return Math.asin(Math.sqrt(Math.min(x, 1)));
            }
        };
    }

    /** Straight line of length 1. */
    static Section plate() {
        return new Shape("plate", 1) {
            @Override
            SkinPoint upperAtArc(double s) {
                return new SkinPoint(s, 0, s, 1, 0, 0);
            }

            @Override
            double arcAtX(double x) {
                return x;
            }
        };
    }

    /** y² = 4 a x: a rounded nose of radius 2 a, open at the rear. */
    static Section parabola(double a) {
        return new Shape("parabola " + a, parabolaArc(a, Math.sqrt(1 / a))) {
            @Override
            SkinPoint upperAtArc(double s) {
                double p = Math.min(s / a, Math.sqrt(s / a));
                double step = 1;
                for (int i = 0; i < 60 && Math.abs(step) > 1e-15; i++) {
                    step = (parabolaArc(a, p) - s) / (2 * a * Math.sqrt(1 + p * p));
                    p -= step;
                }
                double w = Math.sqrt(1 + p * p);
                return new SkinPoint(a * p * p, 2 * a * p, s, p / w, 1 / w, 1 / (2 * a * w * w * w));
            }

            @Override
            double arcAtX(double x) {
                return parabolaArc(a, Math.sqrt(x / a));
            }
        };
    }

    /** For x = a p², y = 2 a p. */
    private static double parabolaArc(double a, double p) {
        double w = Math.sqrt(1 + p * p);
        return a * (p * w + Math.log(p + w));
    }

    abstract static class Shape implements Section {
        private final String name;
        private final double length;

        Shape(String name, double length) {
            this.name = name;
            this.length = length;
        }

        abstract SkinPoint upperAtArc(double s);

        abstract double arcAtX(double x);

        @Override
        public String designation() {
            return name;
        }

        @Override
        public boolean closedTrailingEdge() {
            return Math.abs(upperAtArc(length).y()) < 1e-9;
        }

        @Override
        public SkinPoint atX(SurfaceSide side, double xOverC) {
            if (!(xOverC >= 0 && xOverC <= 1)) {
                throw new IllegalArgumentException("x " + xOverC);
            }
            return atArcLength(side, Math.min(arcAtX(xOverC), length));
        }

        @Override
        public SkinPoint atArcLength(SurfaceSide side, double s) {
            if (!(s >= 0 && s <= length)) {
                throw new IllegalArgumentException("arc length " + s);
            }
            SkinPoint p = upperAtArc(s);
            return side == SurfaceSide.UPPER
                    ? p
                    : new SkinPoint(p.x(), -p.y(), s, p.tangentX(), -p.tangentY(), p.curvature());
        }

        @Override
        public double arcLength(SurfaceSide side) {
            return length;
        }

        @Override
        public double maximumX(SurfaceSide side) {
            return 1;
        }

        @Override
        public double maximumThickness() {
            double thickest = 0;
            for (int i = 0; i <= 1000; i++) {
                thickest = Math.max(thickest, 2 * upperAtArc(length * i / 1000).y());
            }
            return thickest;
        }

        @Override
        public double maximumCamber() {
            return 0;
        }

        @Override
        public double leadingEdgeRadius() {
            double curvature = upperAtArc(0).curvature();
            return curvature == 0 ? 0 : 1 / curvature;
        }

        @Override
        public boolean sameShapeAs(Section other) {
            return name.equals(other.designation());
        }
    }
}
