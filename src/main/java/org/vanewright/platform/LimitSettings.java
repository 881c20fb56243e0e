package org.vanewright.platform;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import java.time.Duration;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.springframework.util.unit.DataSize;
import org.springframework.validation.annotation.Validated;

/**
 * What one caller may ask for.
 *
 * @param calculationsPerMinute calculation requests from one address in a minute
 * @param rendersPerMinute files of records that one address may have made in a minute; kept ones are not counted
 * @param trackedAddresses addresses whose requests are counted at a time; the least used are forgotten first
 * @param apiBody largest request body under {@code /api}
 * @param keptFormsPerHour forms of one network whose text is kept because the session had ended; each makes a session
 * @param bodyTime within which a request's body must have come, wherever it is sent
 */
@Validated
@ConfigurationProperties("vanewright.limits")
public record LimitSettings(
        @Min(1) @Max(1_000_000) @DefaultValue("600") int calculationsPerMinute,
        @Min(1) @Max(1_000_000) @DefaultValue("600") int rendersPerMinute,
        @Min(100) @Max(10_000_000) @DefaultValue("50000") int trackedAddresses,
        @NotNull @DefaultValue("256KB") DataSize apiBody,
        @Min(1) @Max(1_000_000) @DefaultValue("30") int keptFormsPerHour,
        @NotNull @DefaultValue("60s") Duration bodyTime) {}
