package org.vanewright.engineering.unroll;

/** A point or vector of a panel: x rearward, y outboard, z up. */
record Vector3(double x, double y, double z) {
    Vector3 plus(Vector3 other) {
        return new Vector3(x + other.x, y + other.y, z + other.z);
    }

    Vector3 minus(Vector3 other) {
        return new Vector3(x - other.x, y - other.y, z - other.z);
    }

    Vector3 times(double factor) {
        return new Vector3(x * factor, y * factor, z * factor);
    }

    double dot(Vector3 other) {
        return x * other.x + y * other.y + z * other.z;
    }

    Vector3 cross(Vector3 other) {
        return new Vector3(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    double norm() {
        return Math.sqrt(dot(this));
    }

    /** From this at 0 to the other at 1. */
    Vector3 towards(Vector3 other, double fraction) {
        return times(1 - fraction).plus(other.times(fraction));
    }
}
