package org.vanewright.record;

/** What people's own drafts hold, for features that keep something beside them. */
public interface OwnDrafts {
    /**
     * Whether the saved text of any draft of that person, as author or co-author, holds a word.
     *
     * @param word letters and digits only, such as a hash
     * @throws IllegalArgumentException for any other
     */
    boolean mention(String personId, String word);
}
