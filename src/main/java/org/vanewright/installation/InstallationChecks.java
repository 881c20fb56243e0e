package org.vanewright.installation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.vanewright.record.Revision;
import org.vanewright.record.check.CheckResult;
import org.vanewright.record.check.SubmissionChecks;

/** What a reviewer of an installation would look at first. */
@Component
class InstallationChecks implements SubmissionChecks<InstallationDocument> {
    private static final String MEASURED = "Measured devices";

    private final InstallationService installations;

    InstallationChecks(InstallationService installations) {
        this.installations = installations;
    }

    @Override
    public String kind() {
        return "installation";
    }

    @Override
    public List<CheckResult> run(Revision<InstallationDocument> revision) {
        InstallationDocument installation = revision.content();
        List<CheckResult> results = new ArrayList<>();
        installations.fitting(installation).ifPresent(f -> results.add(measured(SampleReview.of(installation, f))));
        Optional<String> warning = installations.temperatureWarning(installation);
        results.add(warning.map(w -> CheckResult.noticed("Skin temperature", w))
                .orElseGet(() ->
                        CheckResult.passed("Skin temperature", "Nothing in the adhesive's record speaks against it.")));
        return List.copyOf(results);
    }

    private static CheckResult measured(SampleReview review) {
        if (review.rows().isEmpty()) {
            return CheckResult.noticed(MEASURED, "None: nobody can say how well the layout was met.");
        }
        String count = review.rows().size() + " measured, " + review.flagged() + " off by more than the tolerance.";
        return review.flagged() > 0 ? CheckResult.noticed(MEASURED, count) : CheckResult.passed(MEASURED, count);
    }
}
