package org.vanewright.engineering.bond;

/**
 * Units of a force along a line of the bond, as data sheets give peel and cleavage strength. Exact by the definitions of
 * the pound, the inch (international yard and pound agreement, 1959) and the standard acceleration (3rd CGPM, 1901).
 */
public enum LineLoadUnit {
    N_PER_CM("N/cm", 1),
    LBF_PER_IN("lb/in", Exact.POUND_FORCE_N / Exact.INCH_CM),
    OZF_PER_IN("oz/in", Exact.POUND_FORCE_N / 16 / Exact.INCH_CM),
    N_PER_25_MM("N/25 mm", 1 / 2.5),
    KGF_PER_25_MM("kgf/25 mm", Exact.KILOGRAM_FORCE_N / 2.5);

    private final String symbol;
    private final double inNPerCm;

    LineLoadUnit(String symbol, double inNPerCm) {
        this.symbol = symbol;
        this.inNPerCm = inNPerCm;
    }

    public String symbol() {
        return symbol;
    }

    /** A value in this unit, in N/cm. */
    public double toNPerCm(double given) {
        return this == N_PER_CM ? given : given * inNPerCm;
    }

    /** A value in N/cm, in this unit. */
    public double fromNPerCm(double nPerCm) {
        return this == N_PER_CM ? nPerCm : nPerCm / inNPerCm;
    }
}
