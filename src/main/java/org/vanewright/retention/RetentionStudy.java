package org.vanewright.retention;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.inference.survival.LogRank;

/**
 * How long devices stay on.
 *
 * @param query what was asked
 * @param groups the largest first
 * @param logRank whether they lose at the same rate; null where nothing can be compared
 * @param invented whether demonstration data are among what it follows from
 * @param leftOutInvented how many invented installations were left out
 * @param unseen published installations without any inspection
 * @param older how many installations are not looked at, since only the newest are
 */
public record RetentionStudy(
        RetentionQuery query,
        List<GroupStudy> groups,
        @Nullable LogRank logRank,
        boolean invented,
        int leftOutInvented,
        List<WatchedInstallation> unseen,
        int older) {
    /** Of every interval here. */
    public static final double CONFIDENCE = 0.95;

    /** How it was computed. */
    public static final String METHOD =
            "Published installations and their published inspections. A device that was found missing or loose was lost between"
                    + " that inspection and the one before; Turnbull's estimator takes just that, and intervals of it are drawn"
                    + " by chance (400 times, fixed seed) from single devices and from whole installations. The product-limit"
                    + " curve of Kaplan and Meier, life table, numbers at risk and log-rank test date each loss to the"
                    + " inspection that found it, which is late; limits are log-log with Greenwood's error, and beside them"
                    + " with an error summed over installations and Student's t. Devices never seen lost count as in place until"
                    + " the last inspection.";

    public static final List<String> SOURCES = List.of(
            "B. W. Turnbull, J. R. Stat. Soc. B 38, 1976 (from memory)",
            "E. L. Kaplan and P. Meier, J. Am. Stat. Assoc. 53, 1958 (from memory)",
            "Z. Ying and L. J. Wei, J. Multivariate Analysis 50, 1994 (from memory)",
            "B. Efron and R. J. Tibshirani, An Introduction to the Bootstrap, 1993 (from memory)",
            "S. J. Cutler and F. Ederer, J. Chronic Diseases 8, 1958 (from memory)",
            "N. Mantel, Cancer Chemotherapy Reports 50, 1966 (from memory)",
            "J. A. Hanley and A. Lippman-Hand, JAMA 249, 1983 (from memory)");

    public static final List<String> VALIDITY = List.of(
            "Clubs record what they notice: installations that went badly may be missing, or be the only ones recorded.",
            "The log-rank test takes each device by itself. Where devices of an installation share a fate it is too sure.",
            "With few installations, intervals that draw installations are too narrow; look at the limits by Student's t.",
            "Of more than twenty groups the twenty largest are shown.",
            "A curve says nothing beyond the longest time watched, and nothing about another aircraft, tape or season.");
}
