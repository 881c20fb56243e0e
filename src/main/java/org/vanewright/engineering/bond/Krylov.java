package org.vanewright.engineering.bond;

/**
 * The four solutions of y'''' + 4 y = 0 that begin as 1, s, s²/2 and s³/6. Each is the derivative of the next; that of the
 * first is −4 times the last. A. N. Krylov's functions, in M. Hetényi, Beams on Elastic Foundation, 1946, chapter I, from
 * memory, and checked against the equation itself.
 */
record Krylov(double k1, double k2, double k3, double k4) {
    static final Krylov NOTHING = new Krylov(0, 0, 0, 0);

    static Krylov at(double s) {
        double cosh = Math.cosh(s);
        double sinh = Math.sinh(s);
        double cos = Math.cos(s);
        double sin = Math.sin(s);
        return new Krylov(cosh * cos, (cosh * sin + sinh * cos) / 2, sinh * sin / 2, (cosh * sin - sinh * cos) / 4);
    }
}
