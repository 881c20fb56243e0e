package org.vanewright.engineering.printing;

/**
 * Where a class of printing material softens, and how it stands sunlight. Ranges over grades; the data sheet of the
 * material at hand decides.
 *
 * @param lowC lowest temperature at which some grade is known to soften
 * @param highC the same of the best grades
 * @param uv how it stands sunlight
 */
public record Softening(double lowC, double highC, UvStanding uv) {
    /** Nearer than this to softening, a bonded foot creeps: engineering judgement, no source. */
    public static final double MARGIN_K = 15;

    /** How a material stands sunlight over a season. */
    public enum UvStanding {
        POOR("poor: turns brittle within a season outdoors unless painted"),
        FAIR("fair: paint or shade it for more than a season"),
        GOOD("good");

        private final String words;

        UvStanding(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** What a skin temperature means for a material. */
    public enum Verdict {
        UNSUITABLE("Unsuitable: it softens below the temperature of this skin"),
        DOUBTFUL("Doubtful: some grades soften, or come close to it, at the temperature of this skin"),
        CLEAR("No softening expected at this temperature");

        private final String words;

        Verdict(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** Compares with the temperature of a skin in °C; {@code CLEAR} is no approval of a material. */
    public Verdict at(double skinC) {
        if (skinC >= highC) {
            return Verdict.UNSUITABLE;
        }
        return skinC + MARGIN_K > lowC ? Verdict.DOUBTFUL : Verdict.CLEAR;
    }
}
