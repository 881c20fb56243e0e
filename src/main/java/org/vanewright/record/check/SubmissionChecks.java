package org.vanewright.record.check;

import java.util.List;
import org.vanewright.record.RecordContent;
import org.vanewright.record.Revision;

/** The checks that only one kind of record needs. A feature gives them. */
public interface SubmissionChecks<T extends RecordContent> {
    /** Such as {@code "airframe"}. */
    String kind();

    List<CheckResult> run(Revision<T> revision);
}
