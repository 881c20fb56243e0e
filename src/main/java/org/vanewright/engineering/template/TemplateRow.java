package org.vanewright.engineering.template;

import org.vanewright.engineering.placement.RowPlan;

/**
 * What the template of one row needs to know beyond its stations.
 *
 * @param plan the row as placed
 * @param deviceName printed on the template
 * @param register line it is laid against
 * @param registerXOverC chord fraction of the spar line; used for {@link Register#SPAR_LINE} only
 */
public record TemplateRow(RowPlan plan, String deviceName, Register register, double registerXOverC) {}
