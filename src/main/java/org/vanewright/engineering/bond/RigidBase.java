package org.vanewright.engineering.bond;

/**
 * Stress under a base that does not bend, on tape that is linearly elastic:
 *
 * <pre>
 * τ = F/A      M = F (h_F + t)      σ_max = N/A + 6 M/(L b²)      T = σ_max b/4
 * </pre>
 *
 * with A = L b, L the edge about which it is tipped and b the way across. First-order mechanics of a rigid rectangular
 * footing, derived; no published check of stick-on devices was found. T is the tension of the pulled half along its edge,
 * to be put beside peel or cleavage strength, on the safe side.
 */
public final class RigidBase {
    /** β b up to which the base counts as rigid. */
    public static final double STIFF_ENOUGH = 1;

    private RigidBase() {}

    public static BondStress under(TapedBase base, BondLoad load) {
        double area = base.areaM2();
        double moment = base.momentNm(load);
        double across = base.acrossM();
        double peak = load.pullN() / area + 6 * moment / (base.edgeM() * across * across);
        return new BondStress(moment, load.forceN() / area, peak, peak * across / 4);
    }
}
