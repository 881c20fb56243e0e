package org.vanewright.review;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.vanewright.record.RecordContent;
import org.vanewright.record.Records;
import org.vanewright.record.RevisionRef;

/** The steps of a review, for every kind of record. Reviewers only; each step decides itself who may take it. */
@Service
public class Reviewing {
    private final ReviewDesk desk;
    private final Claims claims;
    private final Remarks remarks;
    private final CheckRunner checks;

    Reviewing(ReviewDesk desk, Claims claims, Remarks remarks, CheckRunner checks) {
        this.desk = desk;
        this.claims = claims;
        this.remarks = remarks;
        this.checks = checks;
    }

    public void claim(String plural, RevisionRef ref, boolean takeOver) {
        claims.claim(desk.entry(plural, ref), takeOver);
    }

    public void release(String plural, RevisionRef ref) {
        claims.release(desk.entry(plural, ref));
    }

    public void check(String plural, RevisionRef ref) {
        checks.again(desk.entry(plural, ref).service(), ref);
    }

    public Remark remark(String plural, RevisionRef ref, @Nullable String field, @Nullable String text) {
        return remarks.add(desk.entry(plural, ref), field, text);
    }

    public void giveBack(String plural, RevisionRef ref, @Nullable String reason) {
        desk.entry(plural, ref).service().reviews().giveBack(ref, reason == null ? "" : reason);
    }

    public void publish(String plural, RevisionRef ref) {
        publish(desk.entry(plural, ref));
    }

    private static <T extends RecordContent> void publish(Records.Entry<T> entry) {
        entry.service().reviews().publish(entry.revision().ref());
    }

    public void withdraw(String plural, RevisionRef ref, @Nullable String reason) {
        desk.entry(plural, ref).service().reviews().withdraw(ref, reason == null ? "" : reason);
    }
}
