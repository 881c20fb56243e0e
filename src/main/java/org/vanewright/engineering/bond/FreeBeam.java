package org.vanewright.engineering.bond;

/**
 * A beam with free ends on an elastic foundation (Winkler's), loaded by a couple and a force at one place:
 *
 * <pre>
 * E I y'''' + k y = P δ(x − a) + M δ'(x − a),      y'' = y''' = 0 at both ends,      λ = (k / 4 E I)^¼
 * </pre>
 *
 * after M. Hetényi, Beams on Elastic Foundation, University of Michigan Press, 1946, chapters I and III, from memory: the
 * equation is solved here by initial parameters in Krylov's functions. Limits that the tests hold it to: a rigid beam as
 * λ b falls, and an infinite or semi-infinite one as it grows.
 */
final class FreeBeam {
    /** Below this λ b the beam moves as one piece within 10⁻⁸. */
    private static final double RIGID = 0.02;

    /** Beyond this distance from the load, in 1/λ, less than 10⁻⁴ of anything is felt; further parts are left out. */
    private static final double FELT = 9;

    private final double lengthM;
    private final double stiffnessNm2;
    private final double foundationPa;
    private final double lambda;

    /**
     * @param stiffnessNm2 E I
     * @param foundationPa k: force for each metre of beam and metre of deflection
     */
    FreeBeam(double lengthM, double stiffnessNm2, double foundationPa) {
        this.lengthM = lengthM;
        this.stiffnessNm2 = stiffnessNm2;
        this.foundationPa = foundationPa;
        this.lambda = Math.sqrt(Math.sqrt(foundationPa / (4 * stiffnessNm2)));
    }

    /** λ, 1/m. */
    double lambda() {
        return lambda;
    }

    /** Deflection by place along the beam. */
    interface Deflection {
        double at(double xM);
    }

    /**
     * @param atM place of the load from one end
     * @param momentNm couple
     * @param forceN square to the beam
     */
    Deflection under(double atM, double momentNm, double forceN) {
        if (lambda * lengthM < RIGID) {
            return rigid(atM, momentNm, forceN);
        }
        double from = Math.max(0, atM - FELT / lambda);
        double to = Math.min(lengthM, atM + FELT / lambda);
        return between(from, to, atM, momentNm, forceN);
    }

    private Deflection rigid(double atM, double momentNm, double forceN) {
        double middle = lengthM / 2;
        double slope = (forceN * (atM - middle) - momentNm) / (foundationPa * lengthM * lengthM * lengthM / 12);
        double mean = forceN / (foundationPa * lengthM);
        return x -> mean + slope * (x - middle);
    }

    private Deflection between(double fromM, double toM, double atM, double momentNm, double forceN) {
        double load = lambda * (atM - fromM);
        double end = lambda * (toM - fromM);
        double m = momentNm / (stiffnessNm2 * lambda * lambda);
        double p = forceN / (stiffnessNm2 * lambda * lambda * lambda);
        Krylov whole = Krylov.at(end);
        Krylov behind = Krylov.at(end - load);
        // neither bending moment nor shear at the far end: two equations for deflection and slope at the near one
        double bending = m * behind.k1() + p * behind.k2();
        double shear = p * behind.k1() - 4 * m * behind.k4();
        double determinant = 4 * (whole.k3() * whole.k3() - whole.k2() * whole.k4());
        double start = (bending * whole.k3() - shear * whole.k4()) / determinant;
        double slope = (shear * whole.k3() - bending * whole.k2()) / determinant;
        return x -> {
            double s = lambda * (x - fromM);
            if (x < fromM || x > toM) {
                return 0;
            }
            Krylov here = Krylov.at(s);
            Krylov past = s > load ? Krylov.at(s - load) : Krylov.NOTHING;
            return start * here.k1() + slope * here.k2() + m * past.k3() + p * past.k4();
        };
    }
}
