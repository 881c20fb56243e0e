package org.vanewright.engineering.bond;

/**
 * What a load asks of a bond.
 *
 * @param momentNm that tips the base
 * @param shearPa mean shear stress
 * @param peakTensionPa largest stress away from the skin
 * @param cleavageNPerM what the pulled side bears for each metre of edge: the tension integrated over it
 */
public record BondStress(double momentNm, double shearPa, double peakTensionPa, double cleavageNPerM) {
    private static final double NEWTON_PER_CM = 100;

    /** The cleavage line load in the unit of data sheets. */
    public double cleavageNPerCm() {
        return cleavageNPerM / NEWTON_PER_CM;
    }

    /** Of two ways to look at one load, the harsher in each figure. */
    public BondStress larger(BondStress other) {
        return new BondStress(
                Math.max(momentNm, other.momentNm),
                Math.max(shearPa, other.shearPa),
                Math.max(peakTensionPa, other.peakTensionPa),
                Math.max(cleavageNPerM, other.cleavageNPerM));
    }
}
