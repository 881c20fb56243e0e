package org.vanewright.backup;

/** A backup or restore that is not done; its message says why, and nothing has been written. */
final class BackupRefusal extends RuntimeException {
    private static final long serialVersionUID = 1L;

    BackupRefusal(String words) {
        super(words);
    }

    static void require(boolean ok, String words) {
        if (!ok) {
            throw new BackupRefusal(words);
        }
    }
}
