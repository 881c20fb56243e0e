package org.vanewright.engineering.bond;

import java.util.List;

/**
 * How a base bends on its tape.
 *
 * @param modulusPa Young's modulus of the printed base
 * @param thicknessMm of the base
 * @param tapeModulusPa tensile modulus of the tape through its thickness
 * @param placesMm where each vane stands, from one edge of the way across
 */
public record BaseBending(double modulusPa, double thicknessMm, double tapeModulusPa, List<Double> placesMm) {
    public BaseBending {
        placesMm = List.copyOf(placesMm);
    }
}
