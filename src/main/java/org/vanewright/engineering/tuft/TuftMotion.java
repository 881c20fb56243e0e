package org.vanewright.engineering.tuft;

/**
 * What a sequence of frames says of one tuft.
 *
 * @param variance mean over its cell of each pixel's variance in time, in grey levels squared
 * @param noise what of that pixels have that no tuft crosses
 * @param moving of all by which the tuft stands out from the skin, the part that changes in time, 0 to 1
 * @param along where it lies in the mean of time: 1 wholly downstream of its root as marked, −1 wholly upstream, near 0 to
 *     either side or all round
 * @param proposed what it may have done; {@code NOT_SEEN} where nothing stands out from the skin
 */
public record TuftMotion(double variance, double noise, double moving, double along, TuftState proposed) {
    /**
     * A tuft that swings evenly by x of its thicknesses, tip to tip, has {@code moving} = 1 − ln(1 + x)/x; half is reached
     * where x = 2.5, about ±7° of one ten times as long as thick. The bound is common practice of this code.
     */
    public static final double UNSTEADY = 0.5;

    /** Common practice of this code, too. */
    public static final double REVERSED = -0.4;

    static final TuftMotion NOT_MARKED = new TuftMotion(0, 0, 0, 0, TuftState.NOT_SEEN);

    static TuftMotion of(double variance, double noise, double moving, double along) {
        TuftState proposed =
                along <= REVERSED ? TuftState.REVERSED : moving >= UNSTEADY ? TuftState.UNSTEADY : TuftState.STEADY;
        return new TuftMotion(variance, noise, moving, along, proposed);
    }

    static TuftMotion unseen(double variance, double noise) {
        return new TuftMotion(variance, noise, 0, 0, TuftState.NOT_SEEN);
    }
}
