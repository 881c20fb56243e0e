package org.vanewright.evidence;

import org.jspecify.annotations.Nullable;
import org.vanewright.campaign.Measure;
import org.vanewright.engineering.inference.meta.TauEstimator;

/**
 * What somebody asks to see.
 *
 * @param quantity what was compared
 * @param group key of the comparable ones that are summed up; null for the largest
 * @param scale of the changes
 * @param estimator of the variance between campaigns
 */
public record EvidenceQuery(Measure quantity, @Nullable String group, Scale scale, TauEstimator estimator) {}
